package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.ArmAt;
import newel.body.Fingers;
import newel.body.Hand;
import newel.body.Side;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/**
 * A hand: closed round what it holds, flat on what it lies on, loose when it is free. Fingers run along the hand, the
 * thumb stands out along its X, the palm looks to the body's middle when the arm hangs.
 */
record HandShape(Brush brush, ArmAt arm, Side side, Hand hand) {
    private static final double CREASE = 1;

    List<Mark> marks(Tone skin) {
        return switch (hand.hold()) {
            case TOWEL, TOWEL_FOOT, BAG, BOTTLE, BAND, BAND_FOOT, RAIL, CHAIR_BACK, ARMREST, FIST, LEG -> closed(skin);
            case WALL, COUNTER, SEAT, BED, FLOOR, THIGH, HEAD -> flat(skin);
            case OTHER_HAND -> loose(skin);
            case FREE -> hand.fingers().equals(Fingers.LOOSE) ? loose(skin) : fingers(skin);
        };
    }

    /** A point of the hand: along the fingers from the wrist, towards the thumb, out of the palm. */
    private Vec at(double along, double thumbward, double palmward) {
        return arm.wrist()
                .minus(arm.hand().y().times(along))
                .plus(arm.hand().x().times(thumbward))
                .plus(arm.hand().z().times(-side.sign() * palmward));
    }

    private List<Mark> fingers(Tone skin) {
        return new FingerShape(brush, hand.fingers(), point -> at(point.x(), point.y(), point.z()), 1).marks(skin);
    }

    private List<Mark> closed(Tone skin) {
        List<Mark> marks = new ArrayList<>();
        marks.add(brush.limb(
                skin,
                ball(0, 0, 0, .0165),
                ball(.042, .008, -.002, .0165),
                ball(.042, -.008, -.002, .0165),
                ball(.050, .008, .012, .0125),
                ball(.050, -.009, .012, .0125)));
        marks.add(brush.limb(skin, ball(.02, .014, .004, .010), ball(.046, .014, .022, .0085)));
        for (double finger : new double[] {-.0085, 0, .0085}) {
            marks.add(brush.line(Tone.CREASE, CREASE, at(.060, finger, .004), at(.056, finger, .022)));
        }
        return marks;
    }

    private List<Mark> flat(Tone skin) {
        List<Mark> marks = new ArrayList<>();
        marks.add(brush.limb(
                skin,
                ball(0, 0, 0, .016),
                ball(.045, .011, 0, .0125),
                ball(.045, -.011, 0, .0125),
                ball(.100, .005, .002, .0075),
                ball(.092, -.010, .002, .0075)));
        marks.add(brush.limb(skin, ball(.022, .012, 0, .0105), ball(.056, .034, .003, .0075)));
        fingers(marks, .100, .002);
        return marks;
    }

    private List<Mark> loose(Tone skin) {
        List<Mark> marks = new ArrayList<>();
        marks.add(brush.limb(
                skin,
                ball(0, 0, 0, .016),
                ball(.044, .010, 0, .0135),
                ball(.044, -.010, 0, .0135),
                ball(.070, 0, .008, .0135)));
        marks.add(brush.limb(skin, ball(.064, 0, .007, .0140), ball(.086, 0, .022, .0095)));
        marks.add(brush.limb(skin, ball(.020, .012, .002, .0105), ball(.056, .022, .014, .0075)));
        fingers(marks, .078, .016);
        return marks;
    }

    /** Lines between the fingers. */
    private void fingers(List<Mark> marks, double end, double palmward) {
        for (double finger : new double[] {-.006, .002, .009}) {
            marks.add(
                    brush.line(Tone.CREASE, CREASE, at(.058, finger, 0), at(end - Math.abs(finger), finger, palmward)));
        }
    }

    private Ellipsoid ball(double along, double thumbward, double palmward, double radius) {
        return Ellipsoid.ball(at(along, thumbward, palmward), radius);
    }
}
