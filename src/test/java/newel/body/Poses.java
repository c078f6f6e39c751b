package newel.body;

/** Plain poses that several tests start from. */
final class Poses {
    static final Contacts STANDING =
            new Contacts(Ground.FEET, 0, flat(.0455), flat(-.0455), Hand.FREE, Hand.FREE, 0, 0);

    static Foot flat(double z) {
        return new Foot(Foot.Placement.FLAT, 0, z, 0, 0, 0);
    }

    static KeyPose standing() {
        return new KeyPose("standing", Pose.NEUTRAL, STANDING);
    }

    static Pose arms(double plane, double raise, double elbow) {
        Arm arm = new Arm(plane, raise, 0, elbow, 0, 0, 0, 0);
        return Pose.NEUTRAL.withArm(Side.RIGHT, arm).withArm(Side.LEFT, arm);
    }

    /** Straight legs, trunk tipped from the hips; the arms hang when `armsBack` is 0 and lie along the trunk when equal. */
    static Pose leaning(double lean, double armsBack) {
        Arm arm = new Arm(90, lean - armsBack, 0, 0, 0, 0, 0, 0);
        Leg leg = new Leg(lean, 0, 0, 0, 0, 0, 0);
        return legs(tipped(lean), leg).withArm(Side.RIGHT, arm).withArm(Side.LEFT, arm);
    }

    /** Thighs level, shins upright, trunk leaning from the hips, arms along it. */
    static Pose offTheSeat(double lean) {
        return legs(tipped(lean), new Leg(90 + lean, 0, 0, 90, 0, 0, 0));
    }

    static KeyPose seated(Leg right) {
        Pose pose = legs(Pose.NEUTRAL, new Leg(90, 0, 0, 90, 0, 0, 0)).withLeg(Side.RIGHT, right);
        return new KeyPose("seated", pose, seat(Foot.OFF, new Foot(Foot.Placement.FLAT, .245, -.0455, 0, 0, 0)));
    }

    static KeyPose seatedLeaning(double lean) {
        Foot right = new Foot(Foot.Placement.FLAT, .245, .0455, 0, 0, 0);
        Foot left = new Foot(Foot.Placement.FLAT, .245, -.0455, 0, 0, 0);
        Pose pose = legs(tipped(lean), new Leg(90 + lean, 0, 0, 90, 0, 0, 0));
        Arm arm = new Arm(90, lean, 0, 0, 0, 0, 0, 0);
        return new KeyPose("seated", pose.withArm(Side.RIGHT, arm).withArm(Side.LEFT, arm), seat(right, left));
    }

    /** Standing on the left leg. */
    static KeyPose oneLeg(Leg right) {
        Pose pose = Pose.NEUTRAL.withLeg(Side.RIGHT, right);
        Contacts contacts = new Contacts(Ground.FEET, 0, Foot.OFF, flat(-.0455), Hand.FREE, Hand.FREE, 0, 0);
        return new KeyPose("one leg", pose, contacts);
    }

    static Pose legs(Pose pose, Leg leg) {
        return pose.withLeg(Side.RIGHT, leg).withLeg(Side.LEFT, leg);
    }

    private static Contacts seat(Foot right, Foot left) {
        return new Contacts(Ground.SEAT_EDGE, .24, right, left, Hand.FREE, Hand.FREE, 0, 0);
    }

    private static Pose tipped(double lean) {
        Pose n = Pose.NEUTRAL;
        return new Pose(
                new Pelvis(lean, 0, 0),
                n.lumbar(),
                n.thorax(),
                n.neck(),
                0,
                n.rightArm(),
                n.leftArm(),
                n.rightLeg(),
                n.leftLeg());
    }

    private Poses() {}
}
