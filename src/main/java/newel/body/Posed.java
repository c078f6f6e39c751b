package newel.body;

/** A solved pose: the angles it came to, what it touches, and where everything is. */
public record Posed(
        Pose pose, Contacts contacts, TrunkAt trunk, ArmAt rightArm, ArmAt leftArm, LegAt rightLeg, LegAt leftLeg) {
    public ArmAt arm(Side side) {
        return side == Side.RIGHT ? rightArm : leftArm;
    }

    public LegAt leg(Side side) {
        return side == Side.RIGHT ? rightLeg : leftLeg;
    }

    public Vec toe(Side side) {
        return leg(side).toe(contacts.foot(side));
    }

    /** The leg whose sole is further up and forward: the one that a towel loops round. */
    public LegAt reachedOut() {
        Vec right = rightLeg.ball();
        Vec left = leftLeg.ball();
        return right.x() + right.y() > left.x() + left.y() ? rightLeg : leftLeg;
    }
}
