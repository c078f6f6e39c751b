package newel.body;

/** A whole posture as joint angles, degrees. Nod is the head on the neck, forward positive. */
public record Pose(
        Pelvis pelvis,
        Spine lumbar,
        Spine thorax,
        Spine neck,
        double nod,
        Arm rightArm,
        Arm leftArm,
        Leg rightLeg,
        Leg leftLeg) {
    public static final Pose NEUTRAL = new Pose(
            Pelvis.LEVEL,
            Spine.STRAIGHT,
            Spine.STRAIGHT,
            Spine.STRAIGHT,
            0,
            Arm.HANGING,
            Arm.HANGING,
            Leg.STRAIGHT,
            Leg.STRAIGHT);

    public Arm arm(Side side) {
        return side == Side.RIGHT ? rightArm : leftArm;
    }

    public Leg leg(Side side) {
        return side == Side.RIGHT ? rightLeg : leftLeg;
    }

    public Pose withArm(Side side, Arm arm) {
        return side == Side.RIGHT
                ? new Pose(pelvis, lumbar, thorax, neck, nod, arm, leftArm, rightLeg, leftLeg)
                : new Pose(pelvis, lumbar, thorax, neck, nod, rightArm, arm, rightLeg, leftLeg);
    }

    public Pose withLeg(Side side, Leg leg) {
        return side == Side.RIGHT
                ? new Pose(pelvis, lumbar, thorax, neck, nod, rightArm, leftArm, leg, leftLeg)
                : new Pose(pelvis, lumbar, thorax, neck, nod, rightArm, leftArm, rightLeg, leg);
    }
}
