package newel.body;

/** Solves a key pose: puts the pelvis where it is carried, the feet on their places and the hands on what they hold. */
public final class Solver {
    public static Posed pose(KeyPose key) {
        return pose(key.pose(), key.contacts());
    }

    public static Posed pose(Pose pose, Contacts contacts) {
        return at(pose, contacts, Carrying.pelvis(pose, contacts));
    }

    /** Solves with the pelvis at a given point. */
    static Posed at(Pose pose, Contacts contacts, Vec pelvis) {
        TrunkAt trunk = TrunkAt.of(pose, pelvis);
        LegAt right = leg(trunk, pose, contacts, Side.RIGHT);
        LegAt left = leg(trunk, pose, contacts, Side.LEFT);
        return withArms(pose, contacts, trunk, right, left);
    }

    private static LegAt leg(TrunkAt trunk, Pose pose, Contacts contacts, Side side) {
        Foot foot = contacts.foot(side);
        return foot.placed()
                ? Legs.placed(trunk, pose.leg(side), side, Legs.ankle(foot, side), Legs.turn(foot, side))
                : Legs.free(trunk, pose.leg(side), side);
    }

    static Posed withArms(Pose pose, Contacts contacts, TrunkAt trunk, LegAt right, LegAt left) {
        ArmAt rightArm = Arms.held(Arms.free(trunk, pose.rightArm(), Side.RIGHT), contacts.rightHand(), right);
        ArmAt leftArm = Arms.held(Arms.free(trunk, pose.leftArm(), Side.LEFT), contacts.leftHand(), left);
        if (tautTowel(contacts)) {
            Vec middle = rightArm.palm().towards(leftArm.palm(), 0.5);
            Vec half = rightArm.palm().minus(leftArm.palm()).unit().times(contacts.towelWidth() / 2);
            rightArm = Arms.palmTo(rightArm, middle.plus(half));
            leftArm = Arms.palmTo(leftArm, middle.minus(half));
        }
        return new Posed(
                solved(pose, contacts, trunk, rightArm, leftArm, right, left),
                contacts,
                trunk,
                rightArm,
                leftArm,
                right,
                left);
    }

    static boolean tautTowel(Contacts contacts) {
        return contacts.towelWidth() > 0
                && contacts.rightHand().hold() == Hand.Hold.TOWEL
                && contacts.leftHand().hold() == Hand.Hold.TOWEL;
    }

    private static Pose solved(
            Pose pose, Contacts contacts, TrunkAt trunk, ArmAt rightArm, ArmAt leftArm, LegAt right, LegAt left) {
        Pose solved = pose;
        boolean towel = tautTowel(contacts);
        for (Side side : Side.values()) {
            ArmAt arm = side == Side.RIGHT ? rightArm : leftArm;
            if (towel || contacts.hand(side).hold().solved()) {
                solved = solved.withArm(side, Arms.angles(trunk, pose.arm(side), arm, side));
            }
            if (contacts.foot(side).placed()) {
                LegAt leg = side == Side.RIGHT ? right : left;
                solved = solved.withLeg(side, Legs.angles(trunk, pose.leg(side), leg, side));
            }
        }
        return solved;
    }

    private Solver() {}
}
