package newel.catalogue;

import java.util.List;
import newel.body.Arm;
import newel.body.Contacts;
import newel.body.Fingers;
import newel.body.Foot;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Leg;
import newel.body.Pelvis;
import newel.body.Pose;
import newel.body.Side;
import newel.body.Spine;
import newel.body.Vec;

/**
 * Reads a key pose. What is not written is neutral. `arms`, `legs`, `feet` and `hands` say both sides at once, with Z of
 * the right side and mirrored for the left; `rightArm`, `leftArm` and so on say one side.
 */
final class PoseReader {
    /** Height of the seat in statures: 43 cm for a person of 1.60 m; design choice. */
    private static final double SEAT = 0.27;

    static KeyPose read(Entry entry) {
        Ground ground = entry.one("ground", Ground.class, Ground.FEET);
        Pose pose = new Pose(
                pelvis(entry.child("pelvis")),
                spine(entry.child("lumbar")),
                spine(entry.child("thorax")),
                spine(entry.child("neck")),
                entry.number("nod", 0),
                arm(sided(entry, "rightArm", "arms")),
                arm(sided(entry, "leftArm", "arms")),
                leg(sided(entry, "rightLeg", "legs")),
                leg(sided(entry, "leftLeg", "legs")));
        Contacts contacts = new Contacts(
                ground,
                entry.number("seat", ground == Ground.SEAT_BACK || ground == Ground.SEAT_EDGE ? SEAT : 0),
                foot(sided(entry, "rightFoot", "feet"), Side.RIGHT, true),
                foot(sided(entry, "leftFoot", "feet"), Side.LEFT, !entry.has("leftFoot")),
                hand(sided(entry, "rightHand", "hands"), Side.RIGHT, true),
                hand(sided(entry, "leftHand", "hands"), Side.LEFT, !entry.has("leftHand")),
                entry.number("towel", 0),
                entry.number("held", 0));
        KeyPose keyPose = new KeyPose(entry.text("name"), pose, contacts);
        entry.finish();
        return keyPose;
    }

    private static Entry sided(Entry entry, String one, String both) {
        return entry.child(entry.has(one) ? one : both);
    }

    private static Pelvis pelvis(Entry entry) {
        Pelvis pelvis = new Pelvis(entry.number("tilt", 0), entry.number("list", 0), entry.number("turn", 0));
        entry.finish();
        return pelvis;
    }

    private static Spine spine(Entry entry) {
        Spine spine = new Spine(entry.number("flex", 0), entry.number("side", 0), entry.number("turn", 0));
        entry.finish();
        return spine;
    }

    private static Arm arm(Entry entry) {
        Arm arm = new Arm(
                entry.number("plane", 0),
                entry.number("raise", 0),
                entry.number("turn", 0),
                entry.number("elbow", 0),
                entry.number("supination", 0),
                entry.number("wrist", 0),
                entry.number("lift", 0),
                entry.number("forward", 0));
        entry.finish();
        return arm;
    }

    private static Leg leg(Entry entry) {
        Leg leg = new Leg(
                entry.number("flex", 0),
                entry.number("abd", 0),
                entry.number("out", 0),
                entry.number("knee", 0),
                entry.number("ankle", 0),
                entry.number("footTurn", 0),
                entry.number("footTip", 0));
        entry.finish();
        return leg;
    }

    private static Foot foot(Entry entry, Side side, boolean mirrored) {
        double sign = mirrored ? side.sign() : 1;
        Foot foot = new Foot(
                entry.one("is", Foot.Placement.class, Foot.Placement.FREE),
                entry.number("x", 0),
                sign * entry.number("z", 0),
                entry.number("height", 0),
                entry.number("pitch", 0),
                entry.number("turn", 0));
        entry.finish();
        return foot;
    }

    private static Hand hand(Entry entry, Side side, boolean mirrored) {
        double sign = mirrored ? side.sign() : 1;
        List<Double> at = entry.has("at") ? entry.numbers("at") : List.of(0.0, 0.0, 0.0);
        if (at.size() != 3) {
            entry.flaw("'at' needs three numbers");
        }
        Vec point = at.size() == 3 ? new Vec(at.get(0), at.get(1), sign * at.get(2)) : Vec.ZERO;
        Hand hand = new Hand(
                entry.one("hold", Hand.Hold.class, Hand.Hold.FREE),
                point,
                share(entry),
                new Fingers(
                        entry.number("curl", Fingers.LOOSE.curl()), entry.number("thumbTo", Fingers.LOOSE.thumbTo())));
        entry.finish();
        return hand;
    }

    /** A part of the body weight, or the word `leans`. */
    private static double share(Entry entry) {
        return entry.says("share", "leans") ? Hand.LEANS : entry.number("share", 0);
    }

    private PoseReader() {}
}
