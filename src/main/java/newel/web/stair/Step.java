package newel.web.stair;

import java.util.List;
import newel.catalogue.Variant;
import newel.limit.Fit;
import newel.limit.Reason;
import newel.limit.Share;

/**
 * One step of a movement's stair.
 *
 * @param level height from the bottom, 0 the easiest
 * @param state one of here, fits, part, not; empty when it is nobody's stair
 * @param words the state in words, for those who do not see it
 * @param percent share of the way when trimmed, else 100
 * @param drawn the folder of its drawings
 */
public record Step(
        int level,
        String variant,
        String name,
        String state,
        String words,
        int percent,
        List<String> reasons,
        String drawn) {
    /** @param look id of who is drawn; empty for different people */
    public static Step of(int level, Variant variant, Fit fit, boolean here, String look) {
        Share share = fit instanceof Fit.FitsTrimmed trimmed ? trimmed.share() : Share.WHOLE;
        int percent = (int) Math.round(100 * share.least());
        return new Step(
                level,
                variant.id(),
                variant.name(),
                here ? "here" : state(fit),
                (here ? "Now here. " : "") + words(fit, share),
                percent,
                reasons(fit),
                Drawn.at(variant, share, look));
    }

    /** A step of nobody's stair. */
    public static Step of(int level, Variant variant) {
        return new Step(level, variant.id(), variant.name(), "", "", 100, List.of(), Drawn.at(variant, Share.WHOLE));
    }

    public boolean fits() {
        return !state.equals("not");
    }

    public boolean here() {
        return state.equals("here");
    }

    public boolean trimmed() {
        return percent < 100;
    }

    /** {@code fits}, {@code part} or {@code not}. */
    public static String state(Fit fit) {
        return switch (fit) {
            case Fit.Fits fits -> "fits";
            case Fit.FitsTrimmed trimmed -> "part";
            case Fit.DoesNotFit not -> "not";
        };
    }

    private static String words(Fit fit, Share share) {
        return switch (fit) {
            case Fit.Fits fits -> "Fits.";
            case Fit.FitsTrimmed trimmed -> trimmed(share);
            case Fit.DoesNotFit not -> "Does not fit.";
        };
    }

    private static String trimmed(Share share) {
        if (share.left() == share.right()) {
            return "Fits trimmed, to %d %% of the way.".formatted(Math.round(100 * share.left()));
        }
        String side = share.left() < share.right() ? "left" : "right";
        return "Fits trimmed, to %d %% of the way on the %s.".formatted(Math.round(100 * share.least()), side);
    }

    public static List<String> reasons(Fit fit) {
        return switch (fit) {
            case Fit.Fits fits -> List.of();
            case Fit.FitsTrimmed trimmed ->
                trimmed.reasons().stream().map(Reason::text).toList();
            case Fit.DoesNotFit not -> not.reasons().stream().map(Reason::text).toList();
        };
    }
}
