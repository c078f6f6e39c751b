package newel.limit;

import java.util.Set;
import newel.body.Joint;
import newel.body.Motion;
import newel.catalogue.Grip;
import newel.catalogue.Kind;
import newel.catalogue.Kit;
import newel.catalogue.Position;
import newel.catalogue.Support;

/** One machine-checkable consequence of a limitation or of a home. */
public sealed interface Limit {

    /** A limit that holds on the sides it names. */
    sealed interface OfSide extends Limit {
        Sided side();

        OfSide on(Sided side);
    }

    /** The peak of a motion may not exceed this many degrees, on the sides it names. */
    record Angle(Motion motion, Sided side, double maxDegrees) implements OfSide {
        @Override
        public Angle on(Sided other) {
            return new Angle(motion, other, maxDegrees);
        }
    }

    /** The static net moment at a joint may not exceed this, in body weight times stature. */
    record Load(Joint joint, Sided side, double maxBwH) implements OfSide {
        @Override
        public Load on(Sided other) {
            return new Load(joint, other, maxBwH);
        }
    }

    record Positions(Set<Position> allowed) implements Limit {}

    /** Standing and stepping need at least this support. */
    record SupportNeeded(Support least) implements Limit {}

    /** At most this many seconds without a break. */
    record Time(Lasting what, int maxSeconds) implements Limit {}

    record GripAtMost(Sided side, Grip most) implements OfSide {
        @Override
        public GripAtMost on(Sided other) {
            return new GripAtMost(other, most);
        }
    }

    /** No weight through the hand and wrist; a light touch for balance is no weight. */
    record NoWristWeight(Sided side) implements OfSide {
        @Override
        public NoWristWeight on(Sided other) {
            return new NoWristWeight(other);
        }
    }

    /** What a hand holds may not weigh more than this share of the body's mass. */
    record HeldAtMost(Sided side, double maxBodyMasses) implements OfSide {
        @Override
        public HeldAtMost on(Sided other) {
            return new HeldAtMost(other, maxBodyMasses);
        }
    }

    /** Coordination on the catalogue's scale of 1 to 3. */
    record CoordinationAtMost(int most) implements Limit {}

    /** Effort on the 0 to 10 scale. */
    record EffortAtMost(int most) implements Limit {}

    record Avoid(Avoidance what) implements Limit {}

    /** Home: only this kit. */
    record KitAtHome(Set<Kit> kit) implements Limit {}

    /** Home: fingertips must stay under the ceiling. */
    record Ceiling(double maxStatures, int ceilingCm, int statureCm) implements Limit {}

    /** Home: paces of clear floor; stepping and walking need two metres. */
    record ClearSpace(double metres) implements Limit {}

    /**
     * A kind of movement that waits, as screening says. It is asked where the movement is known, not of a variant by
     * itself.
     */
    record Withheld(Kind kind) implements Limit {}

    enum Lasting {
        STANDING,
        ARMS_HIGH,
        /** An isometric hold against effort; a stretch is not one. */
        HOLD
    }
}
