package newel.program;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import newel.adapt.Adapting;
import newel.catalogue.Catalogue;
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
 * @param withheld kinds of movement that wait, as screening says
 */
public record PersonSuiting(Catalogue catalogue, Adapting adapting, Fitting fitting, Limits limits, Set<Kind> withheld)
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
        return waits.isEmpty() ? fitting.fit(variant, limits) : new Fit.DoesNotFit(broken(variant, Share.WHOLE));
    }

    @Override
    public List<Reason> broken(Variant variant, Share share) {
        return Stream.concat(waits(variant).stream(), fitting.broken(variant, share, limits).stream())
                .toList();
    }

    private List<Reason> waits(Variant variant) {
        Kind kind = catalogue.movementOf(variant).kind();
        return withheld.contains(kind) ? List.of(new Reason(new Limit.Withheld(kind), "", words(kind))) : List.of();
    }

    private static String words(Kind kind) {
        return switch (kind) {
            case STRENGTH -> "Strength work waits (readiness and falls check).";
            case BALANCE -> "Balance work at home waits (readiness and falls check).";
            case PULSE, MOBILITY, STRETCH, BREATH -> "Exercise waits (readiness and falls check).";
        };
    }
}
