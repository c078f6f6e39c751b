package newel.catalogue;

import newel.body.Joint;
import newel.body.Motion;

/** What sitting or standing quietly asks anyway: a demand below it is not worth telling. */
public final class Quiet {
    /** Degrees. */
    public static double angle(Motion motion) {
        return Threshold.noLimitBelow(motion);
    }

    /** Body weight times stature. */
    public static double load(Joint joint) {
        return Threshold.noLimitBelow(joint);
    }

    private Quiet() {}
}
