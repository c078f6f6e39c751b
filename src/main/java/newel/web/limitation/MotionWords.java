package newel.web.limitation;

import java.util.Locale;
import newel.body.Motion;
import newel.limit.Avoidance;
import newel.limit.Limit;
import newel.limit.Sided;

/** Motions and limits in plain words. */
public final class MotionWords {
    /** "Arm: raises" reads badly in a list; "Raises the arm" does not. */
    public static String of(Motion motion) {
        String[] verb = motion.verb().split(" ", 2);
        boolean with = motion.verb().endsWith(" with");
        String text = with
                ? motion.verb() + " the " + motion.part()
                : verb[0] + " the " + motion.part() + (verb.length > 1 ? " " + verb[1] : "");
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** One limit in a line. */
    public static String of(Limit limit) {
        return switch (limit) {
            case Limit.Angle a ->
                "%s no further than %d°%s".formatted(of(a.motion()), Math.round(a.maxDegrees()), side(a.side()));
            case Limit.Load l -> "Loads the %s lightly%s".formatted(plain(l.joint()), side(l.side()));
            case Limit.Positions p ->
                "Only "
                        + p.allowed().stream()
                                .sorted()
                                .map(MotionWords::plain)
                                .reduce((x, y) -> x + ", " + y)
                                .orElse("nothing");
            case Limit.SupportNeeded s -> "Standing with at least " + plain(s.least()) + " on a support";
            case Limit.Time t -> "%s for %d seconds at most".formatted(lasting(t.what()), t.maxSeconds());
            case Limit.GripAtMost g -> "No more than a " + plain(g.most()) + " grip" + side(g.side());
            case Limit.NoWristWeight w -> "No weight through the hand" + side(w.side());
            case Limit.HeldAtMost h -> "Little weight in the hand" + side(h.side());
            case Limit.CoordinationAtMost c -> "Simple coordination, " + c.most() + " of 3 at most";
            case Limit.EffortAtMost e -> "Effort of " + e.most() + " of 10 at most";
            case Limit.Avoid a -> avoided(a.what());
            case Limit.KitAtHome k -> "Only what the home has";
            case Limit.Ceiling c -> "Under a ceiling of " + c.ceilingCm() + " cm";
            case Limit.Withheld w -> "No " + plain(w.kind()) + " work for now";
            case Limit.ClearSpace c -> "In the clear floor there is";
        };
    }

    private static String avoided(Avoidance what) {
        return switch (what) {
            case HEAD_BELOW_HEART -> "Head never below the heart";
            case STRAIN -> "Nothing that makes one hold the breath against effort";
            case IMPACT -> "Nothing that lands with a jolt";
            case KNEELING -> "No kneeling";
            case LYING_FLAT -> "Not lying flat";
            case LOADED_TWIST -> "No twisting with a load";
            case END_RANGE_SPINE_BENDING -> "Not rounding the back far";
            case QUICK_POSITION_CHANGE -> "No quick changes of position";
            case QUICK_HEAD_TURN -> "No quick head turns";
            case REACHING_BEHIND -> "Not reaching behind the body";
            case LIFT_FROM_FLOOR -> "Nothing lifted from the floor";
            case ONE_LEG_WITHOUT_SUPPORT -> "Not on one leg without a hand on a support";
            case FLOOR -> "Not down to the floor";
            case OVERHEAD_WHEN_STANDING -> "Not reaching overhead while standing";
        };
    }

    private static String lasting(Limit.Lasting what) {
        return switch (what) {
            case STANDING -> "Stands";
            case ARMS_HIGH -> "Keeps the arms high";
            case HOLD -> "Holds against effort";
        };
    }

    private static String side(Sided side) {
        return side == Sided.BOTH ? "" : ", " + plain(side) + " side";
    }

    private static String plain(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private MotionWords() {}
}
