package newel.web.program;

import java.util.List;
import newel.catalogue.Variant;
import newel.figure.Picture;
import newel.handout.Pictures;
import newel.limit.Fit;
import newel.limit.Reason;
import newel.limit.Share;

/**
 * One step of a movement's stair.
 *
 * @param level height from the bottom, 0 the easiest
 * @param state one of here, fits, part, not
 * @param words the state in words, for those who do not see it
 * @param percent share of the way when trimmed, else 100
 */
public record Step(
        int level,
        String variant,
        String name,
        String state,
        String words,
        int percent,
        List<String> reasons,
        Picture picture) {
    static Step of(int level, Variant variant, Fit fit, boolean here) {
        Share share = fit instanceof Fit.FitsTrimmed trimmed ? trimmed.share() : Share.WHOLE;
        String state = here ? "here" : state(fit);
        int percent = (int) Math.round(100 * share.least());
        return new Step(
                level,
                variant.id(),
                variant.name(),
                state,
                words(here, fit, percent),
                percent,
                reasons(fit),
                Pictures.of(variant, share));
    }

    public boolean fits() {
        return !state.equals("not");
    }

    public boolean here() {
        return state.equals("here");
    }

    private static String state(Fit fit) {
        return switch (fit) {
            case Fit.Fits fits -> "fits";
            case Fit.FitsTrimmed trimmed -> "part";
            case Fit.DoesNotFit not -> "not";
        };
    }

    private static String words(boolean here, Fit fit, int percent) {
        String now = here ? "Now here. " : "";
        return now
                + switch (fit) {
                    case Fit.Fits fits -> "Fits.";
                    case Fit.FitsTrimmed trimmed -> "Fits through " + percent + " % of the way.";
                    case Fit.DoesNotFit not -> "Does not fit.";
                };
    }

    static List<String> reasons(Fit fit) {
        return switch (fit) {
            case Fit.Fits fits -> List.of();
            case Fit.FitsTrimmed trimmed ->
                trimmed.reasons().stream().map(Reason::text).toList();
            case Fit.DoesNotFit not -> not.reasons().stream().map(Reason::text).toList();
        };
    }
}
