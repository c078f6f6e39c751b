package newel.limit;

import java.util.Set;
import newel.body.Joint;
import newel.body.Motion;
import newel.catalogue.Grip;
import newel.catalogue.Kit;
import newel.catalogue.Position;
import newel.catalogue.Support;

/** One machine-checkable consequence of a limitation or of a home. */
public sealed interface Limit {

    /** The peak of a motion may not exceed this many degrees, on the sides it names. */
    record Angle(Motion motion, Sided side, double maxDegrees) implements Limit {}

    /** The static net moment at a joint may not exceed this, in body weight times stature. */
    record Load(Joint joint, Sided side, double maxBwH) implements Limit {}

    record Positions(Set<Position> allowed) implements Limit {}

    /** Standing and stepping need at least this support. */
    record SupportNeeded(Support least) implements Limit {}

    /** At most this many seconds without a break. */
    record Time(Lasting what, int maxSeconds) implements Limit {}

    record GripAtMost(Sided side, Grip most) implements Limit {}

    /** No weight through the hand and wrist. */
    record NoWristWeight(Sided side) implements Limit {}

    /** Effort on the 0 to 10 scale. */
    record EffortAtMost(int most) implements Limit {}

    record Avoid(Avoidance what) implements Limit {}

    /** Home: only this kit. */
    record KitAtHome(Set<Kit> kit) implements Limit {}

    /** Home: fingertips must stay under the ceiling. */
    record Ceiling(double maxStatures, int ceilingCm, int statureCm) implements Limit {}

    /** Home: paces of clear floor; stepping and walking need two metres. */
    record ClearSpace(double metres) implements Limit {}

    enum Lasting {
        STANDING,
        ARMS_HIGH,
        HOLD
    }
}
