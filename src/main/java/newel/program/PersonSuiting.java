package newel.program;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import newel.adapt.Adapting;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Kind;
import newel.catalogue.Variant;
import newel.compose.Choice;
import newel.compose.Choices;
import newel.compose.Suiting;
import newel.limit.Fit;
import newel.limit.Fitting;
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

    private List<Reason> waits(Variant variant) {
        Kind kind = catalogue.movementOf(variant).kind();
        return Optional.ofNullable(withheld.get(kind)).stream()
                .map(why -> new Reason(new Limit.Withheld(kind), "", why))
                .toList();
    }
}
