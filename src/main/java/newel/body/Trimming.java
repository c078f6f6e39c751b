package newel.body;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A movement through part of its way: each later key pose is drawn back towards the first. Arms and legs may be trimmed a
 * side at a time; trunk and whole poses take the lesser of the two shares.
 */
public final class Trimming {
    public static List<KeyPose> trimmed(List<KeyPose> keyPoses, Part part, double left, double right) {
        if (part == Part.NONE || left >= 1 && right >= 1) {
            return keyPoses;
        }
        KeyPose first = keyPoses.getFirst();
        return IntStream.range(0, keyPoses.size())
                .mapToObj(i -> i == 0 ? first : drawnBack(first, keyPoses.get(i), part, left, right))
                .toList();
    }

    private static KeyPose drawnBack(KeyPose first, KeyPose later, Part part, double left, double right) {
        return switch (part) {
            case NONE -> later;
            case TRUNK, WHOLE -> whole(first, later, Math.min(left, right));
            case ARMS -> arms(first, later, left, right);
            case LEGS -> legs(first, later, left, right);
        };
    }

    private static KeyPose whole(KeyPose first, KeyPose later, double share) {
        Contacts contacts = Blend.of(first.contacts(), later.contacts(), 1);
        Contacts mixed = new Contacts(
                contacts.ground(),
                contacts.seatHeight(),
                place(first, later, Side.RIGHT, share),
                place(first, later, Side.LEFT, share),
                hold(first, later, Side.RIGHT, share),
                hold(first, later, Side.LEFT, share),
                width(first, later, share),
                later.contacts().heldMass());
        return new KeyPose(later.name(), Blend.of(solved(first), solved(later), share), mixed);
    }

    private static KeyPose arms(KeyPose first, KeyPose later, double left, double right) {
        Pose from = solved(first);
        Pose to = solved(later);
        Pose pose = later.pose()
                .withArm(Side.RIGHT, Blend.of(from.rightArm(), to.rightArm(), right))
                .withArm(Side.LEFT, Blend.of(from.leftArm(), to.leftArm(), left));
        Contacts c = later.contacts();
        Contacts contacts = new Contacts(
                c.ground(),
                c.seatHeight(),
                c.rightFoot(),
                c.leftFoot(),
                hold(first, later, Side.RIGHT, right),
                hold(first, later, Side.LEFT, left),
                width(first, later, Math.min(left, right)),
                c.heldMass());
        return new KeyPose(later.name(), pose, contacts);
    }

    private static KeyPose legs(KeyPose first, KeyPose later, double left, double right) {
        Pose from = solved(first);
        Pose to = solved(later);
        Pose pose = later.pose()
                .withLeg(Side.RIGHT, Blend.of(from.rightLeg(), to.rightLeg(), right))
                .withLeg(Side.LEFT, Blend.of(from.leftLeg(), to.leftLeg(), left));
        Contacts c = later.contacts();
        Contacts contacts = new Contacts(
                c.ground(),
                c.seatHeight(),
                place(first, later, Side.RIGHT, right),
                place(first, later, Side.LEFT, left),
                c.rightHand(),
                c.leftHand(),
                c.towelWidth(),
                c.heldMass());
        return new KeyPose(later.name(), pose, contacts);
    }

    /** The angles that the contacts come to, so that drawing back starts from what is really shown. */
    private static Pose solved(KeyPose key) {
        return Solver.pose(key).pose();
    }

    /** A foot that steps goes part of the way; it lands as the later pose lands it. */
    private static Foot place(KeyPose first, KeyPose later, Side side, double share) {
        Foot a = first.contacts().foot(side);
        Foot b = later.contacts().foot(side);
        return !a.placed() || !b.placed()
                ? b
                : new Foot(
                        b.placement(),
                        Blend.of(a.x(), b.x(), share),
                        Blend.of(a.z(), b.z(), share),
                        Blend.of(a.height(), b.height(), share),
                        Blend.of(a.pitch(), b.pitch(), share),
                        Blend.of(a.turn(), b.turn(), share));
    }

    private static Hand hold(KeyPose first, KeyPose later, Side side, double share) {
        Hand a = first.contacts().hand(side);
        Hand b = later.contacts().hand(side);
        return a.hold() == b.hold()
                ? new Hand(
                        b.hold(),
                        a.at().towards(b.at(), share),
                        b.share(),
                        Fingers.between(a.fingers(), b.fingers(), share))
                : b;
    }

    private static double width(KeyPose first, KeyPose later, double share) {
        return Blend.of(first.contacts().towelWidth(), later.contacts().towelWidth(), share);
    }

    private Trimming() {}
}
