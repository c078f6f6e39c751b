package newel.program;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import newel.adapt.Adapting;
import newel.adapt.Way;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Kind;
import newel.catalogue.Variant;
import newel.compose.Choice;
import newel.compose.Choices;
import newel.compose.Endurance;
import newel.compose.Suiting;
import newel.limit.Bound;
import newel.limit.Fit;
import newel.limit.Fitting;
import newel.limit.Lasts;
import newel.limit.Limit;
import newel.limit.Limits;
import newel.limit.Reason;
import newel.limit.Share;

/**
 * What suits a client, by the limits of body, home and screening together.
 *
 * @param withheld kinds of movement that wait, each with what it waits for
 */
public record PersonSuiting(
        Catalogue catalogue, Adapting adapting, Fitting fitting, Limits limits, Map<Kind, String> withheld)
        implements Suiting {
    @Override
    public Choice adapt(Variant wanted) {
        List<Reason> waits = waits(wanted);
        return waits.isEmpty()
                ? Choices.of(adapting.adapt(wanted, limits))
                : new Choice.Leave(waits.stream().map(Reason::text).toList());
    }

    @Override
    public Fit fit(Variant variant) {
        List<Reason> waits = waits(variant);
        return waits.isEmpty()
                ? fitting.fit(variant, limits)
                : new Fit.DoesNotFit(broken(variant, Share.WHOLE, variant.dose().beginner()));
    }

    @Override
    public List<Reason> broken(Variant variant, Share share, Dose dose) {
        return Stream.concat(waits(variant).stream(), fitting.broken(variant, share, dose, limits).stream())
                .toList();
    }

    @Override
    public List<Way> ways(Variant wanted) {
        return waits(wanted).isEmpty() ? adapting.ways(wanted, limits) : List.of();
    }

    @Override
    public Lasts lasts(Variant variant, Share share, Dose dose) {
        return fitting.lasts(variant, share, dose);
    }

    @Override
    public Endurance endurance() {
        return new Endurance(most(Limit.Lasting.STANDING), most(Limit.Lasting.ARMS_HIGH));
    }

    private int most(Limit.Lasting what) {
        return limits.limits().stream()
                .filter(limit -> limit instanceof Limit.Time time && time.what() == what)
                .mapToInt(limit -> ((Limit.Time) limit).maxSeconds())
                .min()
                .orElse(Endurance.WITHOUT_LIMIT.standingSeconds());
    }

    @Override
    public List<String> limitations() {
        return Stream.concat(
                        withheld.values().stream(), limits.bounds().stream().map(Bound::whose))
                .distinct()
                .toList();
    }

    @Override
    public Suiting without(Set<String> limitations) {
        Map<Kind, String> still = new EnumMap<>(Kind.class);
        withheld.forEach((kind, why) -> {
            if (!limitations.contains(why)) {
                still.put(kind, why);
            }
        });
        List<Bound> bounds = limits.bounds().stream()
                .filter(bound -> !limitations.contains(bound.whose()))
                .toList();
        return new PersonSuiting(catalogue, adapting, fitting, new Limits(bounds), still);
    }

    private List<Reason> waits(Variant variant) {
        Kind kind = catalogue.movementOf(variant).kind();
        return Optional.ofNullable(withheld.get(kind)).stream()
                .map(why -> new Reason(new Limit.Withheld(kind), "", why))
                .toList();
    }
}
