package newel.body;

/** The same posture with left and right changed over: what the other side does when sides take turns. */
public final class Mirror {
    public static KeyPose of(KeyPose key) {
        return new KeyPose(key.name(), of(key.pose()), of(key.contacts()));
    }

    static Pose of(Pose p) {
        return new Pose(
                new Pelvis(p.pelvis().tilt(), -p.pelvis().list(), -p.pelvis().turn()),
                of(p.lumbar()),
                of(p.thorax()),
                of(p.neck()),
                p.nod(),
                p.leftArm(),
                p.rightArm(),
                p.leftLeg(),
                p.rightLeg());
    }

    private static Spine of(Spine part) {
        return new Spine(part.flex(), -part.side(), -part.turn());
    }

    static Contacts of(Contacts c) {
        return new Contacts(
                c.ground(),
                c.seatHeight(),
                of(c.leftFoot()),
                of(c.rightFoot()),
                of(c.leftHand()),
                of(c.rightHand()),
                c.towelWidth(),
                c.heldMass());
    }

    /** A foot's turn counts outward and stays. */
    private static Foot of(Foot f) {
        return new Foot(f.placement(), f.x(), -f.z(), f.height(), f.pitch(), f.turn());
    }

    /** On the thigh the point is a share of the way from hip to knee and has no side. */
    private static Hand of(Hand h) {
        Vec at = h.at();
        return new Hand(h.hold(), new Vec(at.x(), at.y(), -at.z()), h.share(), h.fingers());
    }

    private Mirror() {}
}
