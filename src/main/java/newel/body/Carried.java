package newel.body;

import java.util.List;

/**
 * The outside forces that carry a pose, in body weights: at each foot and each hand. Hands carry what {@link Leaning}
 * says; the feet carry the rest, split so that forces and moments balance. A seat or bed carries the trunk, so that a
 * resting leg's foot bears only its own shank and foot. Friction and muscle co-contraction are left out (limits of the
 * model).
 */
record Carried(Force rightFoot, Force leftFoot, Force rightHand, Force leftHand) {
    /** A force in body weights and where it acts. */
    record Force(Vec at, Vec push) {
        static final Force NONE = new Force(Vec.ZERO, Vec.ZERO);

        static Force up(Vec at, double weights) {
            return new Force(at, new Vec(0, weights, 0));
        }
    }

    /** Off the bed by this much, the pelvis counts as lifted. */
    private static final double LIFTED = 0.02;

    Force foot(Side side) {
        return side == Side.RIGHT ? rightFoot : leftFoot;
    }

    Force hand(Side side) {
        return side == Side.RIGHT ? rightHand : leftHand;
    }

    static Carried of(Posed posed, Bodies bodies) {
        Force right = Leaning.on(posed, Side.RIGHT);
        Force left = Leaning.on(posed, Side.LEFT);
        return switch (posed.contacts().ground()) {
            case FEET -> standing(posed, bodies, right, left);
            case SEAT_BACK, SEAT_EDGE, KNEES ->
                new Carried(own(posed, bodies, Side.RIGHT), own(posed, bodies, Side.LEFT), right, left);
            case BED -> lying(posed, bodies, right, left);
        };
    }

    /** The weight of shank and foot, straight under their own centre. */
    private static Force own(Posed posed, Bodies bodies, Side side) {
        if (!posed.contacts().foot(side).placed()) {
            return Force.NONE;
        }
        List<Bodies.Point> shank = bodies.shank(side);
        Vec centre = Bodies.centre(shank);
        return Force.up(
                new Vec(centre.x(), posed.contacts().foot(side).height(), centre.z()),
                shank.stream().mapToDouble(Bodies.Point::mass).sum());
    }

    /** Shoulders and feet carry a lifted pelvis like the two ends of a beam. */
    private static Carried lying(Posed posed, Bodies bodies, Force right, Force left) {
        TrunkAt trunk = posed.trunk();
        boolean lifted = trunk.pelvis().y() > Furniture.BED + Furniture.LYING + LIFTED;
        if (!lifted || Math.abs(posed.pose().pelvis().list()) > 45) {
            return new Carried(own(posed, bodies, Side.RIGHT), own(posed, bodies, Side.LEFT), right, left);
        }
        Vec middle = middleOfFeet(posed);
        double span = middle.x() - trunk.midShoulders().x();
        double share = (bodies.centre().x() - trunk.midShoulders().x()) / span;
        return onFeet(posed, middle, Math.max(0, Math.min(1, share)), right, left);
    }

    private static Carried standing(Posed posed, Bodies bodies, Force right, Force left) {
        Vec centre = bodies.centre();
        double hands = right.push().y() + left.push().y();
        Vec borne = right.at()
                .times(right.push().y())
                .plus(left.at().times(left.push().y()));
        Vec pressure = centre.minus(borne).times(1 / (1 - hands));
        return onFeet(posed, pressure, 1 - hands, right, left);
    }

    private static Carried onFeet(Posed posed, Vec pressure, double weights, Force right, Force left) {
        double toRight = shareOnRight(posed, pressure);
        Vec line = sole(posed, Side.LEFT).towards(sole(posed, Side.RIGHT), toRight);
        Vec off = new Vec(pressure.x() - line.x(), 0, pressure.z() - line.z());
        return new Carried(
                Force.up(sole(posed, Side.RIGHT).plus(off), weights * toRight),
                Force.up(sole(posed, Side.LEFT).plus(off), weights * (1 - toRight)),
                right,
                left);
    }

    /** Where the line of pressure falls between the two feet: 1 all on the right. */
    private static double shareOnRight(Posed posed, Vec pressure) {
        boolean right = posed.contacts().rightFoot().carries();
        boolean left = posed.contacts().leftFoot().carries();
        if (right != left) {
            return right ? 1 : 0;
        }
        Vec from = sole(posed, Side.LEFT);
        Vec to = sole(posed, Side.RIGHT).minus(from);
        double length = to.x() * to.x() + to.z() * to.z();
        double along = ((pressure.x() - from.x()) * to.x() + (pressure.z() - from.z()) * to.z()) / length;
        return Math.max(0, Math.min(1, along));
    }

    private static Vec sole(Posed posed, Side side) {
        LegAt leg = posed.leg(side);
        return posed.contacts().foot(side).placement() == Foot.Placement.BALL
                ? leg.ball()
                : leg.heel().towards(leg.ball(), 0.5);
    }

    private static Vec middleOfFeet(Posed posed) {
        boolean right = posed.contacts().rightFoot().carries();
        boolean left = posed.contacts().leftFoot().carries();
        if (right != left) {
            return sole(posed, right ? Side.RIGHT : Side.LEFT);
        }
        return sole(posed, Side.RIGHT).towards(sole(posed, Side.LEFT), 0.5);
    }
}
