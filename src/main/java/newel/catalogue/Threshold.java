package newel.catalogue;

import newel.body.Joint;
import newel.body.Motion;

/**
 * How much an angle or a load must grow to count, and what is so small that no limit reaches it. The figures are those
 * that the catalogue was drafted with (design choice).
 */
final class Threshold {
    /** Degrees by which an angle must grow to count. */
    static double step(Motion motion) {
        return switch (motion) {
            case SHOULDER_RAISE, SHOULDER_ABDUCTION, SHOULDER_EXTENSION -> 4;
            case ELBOW_BEND, SHOULDER_OUT, SHOULDER_IN, WRIST_BACK -> 6;
            case LOW_BACK_FLEXION, LOW_BACK_EXTENSION, LOW_BACK_SIDE, LOW_BACK_TURN -> 3;
            case UPPER_BACK_FLEXION, UPPER_BACK_EXTENSION, UPPER_BACK_SIDE, UPPER_BACK_TURN -> 3;
            case NECK_FLEXION, NECK_EXTENSION, NECK_SIDE, NECK_TURN -> 7;
            case HIP_FLEXION, HIP_EXTENSION, HIP_ABDUCTION, HIP_ADDUCTION, HIP_OUT, HIP_IN -> 5;
            case KNEE_BEND, KNEE_BEND_LOADED, ANKLE_UP, ANKLE_DOWN -> 5;
        };
    }

    /** Degrees that everybody has who can do any of this; a rise that stays under them is no rise. */
    static double noLimitBelow(Motion motion) {
        return switch (motion) {
            case SHOULDER_RAISE, SHOULDER_ABDUCTION -> 25;
            case ELBOW_BEND -> 75;
            case HIP_FLEXION, KNEE_BEND, KNEE_BEND_LOADED -> 30;
            case SHOULDER_OUT, SHOULDER_IN, WRIST_BACK -> 30;
            case ANKLE_DOWN -> 15;
            case SHOULDER_EXTENSION, HIP_EXTENSION, HIP_ABDUCTION, HIP_ADDUCTION, HIP_OUT, HIP_IN, ANKLE_UP -> 5;
            case LOW_BACK_FLEXION, LOW_BACK_EXTENSION, LOW_BACK_SIDE, LOW_BACK_TURN -> 3;
            case UPPER_BACK_FLEXION, UPPER_BACK_EXTENSION, UPPER_BACK_SIDE, UPPER_BACK_TURN -> 3;
            case NECK_FLEXION, NECK_EXTENSION, NECK_SIDE, NECK_TURN -> 20;
        };
    }

    /** Body weight times stature by which a load must grow to count. */
    static double step(Joint joint) {
        return switch (joint) {
            case SHOULDER -> 0.001;
            case ELBOW -> 0.0006;
            case LOW_BACK, HIP, KNEE, ANKLE -> 0.003;
        };
    }

    /**
     * Body weight times stature that sitting or standing quietly asks anyway: half of a straight arm held level (.0086), a
     * level forearm (.0022), a trunk ten degrees off upright, a level shank (.0091), and a centre of mass .03 ahead of two
     * ankles, doubled for the swaying of a quiet stance (statics from Winter's masses).
     */
    static double noLimitBelow(Joint joint) {
        return switch (joint) {
            case SHOULDER -> 0.0043;
            case ELBOW -> 0.0022;
            case LOW_BACK -> 0.015;
            case HIP -> 0.02;
            case KNEE -> 0.0091;
            case ANKLE -> 0.03;
        };
    }

    private Threshold() {}
}
