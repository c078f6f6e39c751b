package newel.limit;

import java.util.Optional;
import newel.body.Motion;
import newel.body.Side;
import newel.catalogue.Position;
import newel.catalogue.Trait;

/** Says in a sentence how what is asked does what has to be avoided, or nothing when it does not. */
final class Avoiding {
    /** Three fifths of the comfortable low-back bend of 40 degrees at 70 and over, and of 25 above it (design choice). */
    private static final double LOW_BACK_END = 24;

    private static final double UPPER_BACK_END = 18;
    /** An upper arm this far behind the trunk reaches behind, degrees (design choice). */
    private static final double BEHIND = 15;
    /** Turned this far with something in the hands is a loaded twist, degrees (design choice). */
    private static final double TWISTED = 15;

    private static final double OVERHEAD = 90;

    static Optional<String> how(Avoidance what, Asked asked) {
        return switch (what) {
            case HEAD_BELOW_HEART -> Breaking.when(asked.body().headBelowHeart(), "Brings the head below the heart");
            case STRAIN -> Breaking.when(asked.has(Trait.STRAIN), "Makes it easy to hold the breath against effort");
            case IMPACT -> Breaking.when(asked.has(Trait.IMPACT), "Lands with a jolt");
            case KNEELING -> Breaking.when(asked.kneels(), "Kneels");
            case LYING_FLAT ->
                Breaking.when(asked.has(Trait.LYING_FLAT) || asked.positions().contains(Position.LYING), "Lies flat");
            case LOADED_TWIST ->
                Breaking.when(asked.has(Trait.LOADED_TWIST) || loadedTwist(asked), "Twists the trunk under load");
            case END_RANGE_SPINE_BENDING ->
                Breaking.when(
                        most(asked, Motion.LOW_BACK_FLEXION) > LOW_BACK_END
                                || most(asked, Motion.UPPER_BACK_FLEXION) > UPPER_BACK_END,
                        "Rounds the back far");
            case QUICK_POSITION_CHANGE ->
                Breaking.when(asked.has(Trait.QUICK_POSITION_CHANGE), "Changes position quickly");
            case QUICK_HEAD_TURN -> Breaking.when(asked.has(Trait.QUICK_HEAD_TURN), "Turns the head quickly");
            case REACHING_BEHIND ->
                Breaking.when(most(asked, Motion.SHOULDER_EXTENSION) > BEHIND, "Reaches behind the body");
            case LIFT_FROM_FLOOR ->
                Breaking.when(asked.has(Trait.LIFT_FROM_FLOOR), "Lifts something from near the floor");
            case ONE_LEG_WITHOUT_SUPPORT ->
                Breaking.when(asked.oneLegUnsupported(), "Stands on one leg without a hand on a support");
            case FLOOR ->
                Breaking.when(
                        asked.positions().contains(Position.FLOOR) || asked.has(Trait.FLOOR_TRANSFER),
                        "Goes down to the floor");
            case OVERHEAD_WHEN_STANDING ->
                Breaking.when(
                        asked.stands() && most(asked, Motion.SHOULDER_RAISE) > OVERHEAD,
                        "Reaches overhead while standing");
        };
    }

    private static boolean loadedTwist(Asked asked) {
        double turn = most(asked, Motion.LOW_BACK_TURN) + most(asked, Motion.UPPER_BACK_TURN);
        return turn > TWISTED && asked.heldBodyMasses() > 0;
    }

    private static double most(Asked asked, Motion motion) {
        return Math.max(asked.body().angle(motion, Side.LEFT), asked.body().angle(motion, Side.RIGHT));
    }

    private Avoiding() {}
}
