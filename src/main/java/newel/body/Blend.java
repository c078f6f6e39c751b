package newel.body;

/** Mixes two poses: angles in a straight line, the upper arm's direction along a great circle. */
final class Blend {
    private static final double SAME_DIRECTION = 1e-9;

    static double of(double a, double b, double share) {
        return a + (b - a) * share;
    }

    static Pelvis of(Pelvis a, Pelvis b, double t) {
        return new Pelvis(of(a.tilt(), b.tilt(), t), of(a.list(), b.list(), t), of(a.turn(), b.turn(), t));
    }

    static Spine of(Spine a, Spine b, double t) {
        return new Spine(of(a.flex(), b.flex(), t), of(a.side(), b.side(), t), of(a.turn(), b.turn(), t));
    }

    static Leg of(Leg a, Leg b, double t) {
        return new Leg(
                of(a.flex(), b.flex(), t),
                of(a.abd(), b.abd(), t),
                of(a.out(), b.out(), t),
                of(a.knee(), b.knee(), t),
                of(a.ankle(), b.ankle(), t),
                of(a.footTurn(), b.footTurn(), t),
                of(a.footTip(), b.footTip(), t));
    }

    static Arm of(Arm a, Arm b, double t) {
        Vec direction = greatCircle(direction(a), direction(b), t);
        double raise = Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, -direction.y()))));
        double plane = Math.hypot(direction.x(), direction.z()) < SAME_DIRECTION
                ? b.plane()
                : Math.toDegrees(Math.atan2(direction.x(), direction.z()));
        double turn = a.turn() + Angles.wrap(b.turn() - a.turn()) * t;
        return new Arm(
                plane,
                raise,
                turn,
                of(a.elbow(), b.elbow(), t),
                of(a.supination(), b.supination(), t),
                of(a.wrist(), b.wrist(), t),
                of(a.lift(), b.lift(), t),
                of(a.forward(), b.forward(), t));
    }

    /** The upper arm as a unit vector, outward counted as +Z on either side. */
    private static Vec direction(Arm arm) {
        double raise = Math.toRadians(arm.raise());
        double plane = Math.toRadians(arm.plane());
        double out = Math.sin(raise);
        return new Vec(out * Math.sin(plane), -Math.cos(raise), out * Math.cos(plane));
    }

    private static Vec greatCircle(Vec a, Vec b, double t) {
        double angle = Math.acos(Math.max(-1, Math.min(1, a.dot(b))));
        double sine = Math.sin(angle);
        if (sine < SAME_DIRECTION) {
            return t < 0.5 ? a : b;
        }
        return a.times(Math.sin((1 - t) * angle) / sine)
                .plus(b.times(Math.sin(t * angle) / sine))
                .unit();
    }

    static Pose of(Pose a, Pose b, double t) {
        return new Pose(
                of(a.pelvis(), b.pelvis(), t),
                of(a.lumbar(), b.lumbar(), t),
                of(a.thorax(), b.thorax(), t),
                of(a.neck(), b.neck(), t),
                of(a.nod(), b.nod(), t),
                of(a.rightArm(), b.rightArm(), t),
                of(a.leftArm(), b.leftArm(), t),
                of(a.rightLeg(), b.rightLeg(), t),
                of(a.leftLeg(), b.leftLeg(), t));
    }

    /** A foot under way: lifted over the floor when it changes place, free when one end is free. */
    static Foot of(Foot a, Foot b, double t) {
        if (a.kneels() != b.kneels()) {
            return t <= 0 ? a : t >= 1 ? b : Foot.OFF;
        }
        if (a.kneels()) {
            return new Foot(
                    b.placement(), of(a.x(), b.x(), t), of(a.z(), b.z(), t), of(a.height(), b.height(), t), 0, 0);
        }
        if (t <= 0 || !b.placed()) {
            return t <= 0 ? a : b;
        }
        if (!a.placed()) {
            return t >= 1 ? b : a;
        }
        double moved = Math.hypot(b.x() - a.x(), b.z() - a.z());
        double lift = moved < 0.02 ? 0 : Math.min(0.05, moved / 3) * Math.sin(Math.PI * t);
        Foot.Placement placement = t >= 1 || lift == 0 ? b.placement() : Foot.Placement.TOUCH;
        return new Foot(
                placement,
                of(a.x(), b.x(), t),
                of(a.z(), b.z(), t),
                of(a.height(), b.height(), t) + lift,
                of(a.pitch(), b.pitch(), t),
                of(a.turn(), b.turn(), t));
    }

    /** A hand that holds the same thing at both ends slides; otherwise it lets go on the way. */
    static Hand of(Hand a, Hand b, double t) {
        if (t <= 0 || t >= 1) {
            return t <= 0 ? a : b;
        }
        return a.hold() == b.hold() ? slid(a, b, t) : Hand.FREE;
    }

    private static Hand slid(Hand a, Hand b, double t) {
        return new Hand(
                a.hold(),
                a.at().towards(b.at(), t),
                of(a.share(), b.share(), t),
                Fingers.between(a.fingers(), b.fingers(), t));
    }

    static Contacts of(Contacts a, Contacts b, double t) {
        return new Contacts(
                t <= 0 ? a.ground() : b.ground(),
                of(a.seatHeight(), b.seatHeight(), t),
                of(a.rightFoot(), b.rightFoot(), t),
                of(a.leftFoot(), b.leftFoot(), t),
                of(a.rightHand(), b.rightHand(), t),
                of(a.leftHand(), b.leftHand(), t),
                of(a.towelWidth(), b.towelWidth(), t),
                of(a.heldMass(), b.heldMass(), t));
    }

    private Blend() {}
}
