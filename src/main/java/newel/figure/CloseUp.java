package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** The right hand alone, palm to the viewer, where the fingers are all that moves: a whole person would hide it. */
final class CloseUp {
    static final String WHOLE = "Whole body";
    /** So large that the hand stands as high as a person who sits. */
    private static final double SIZE = 4.6;

    private static final Brush BRUSH = new Brush(new Camera(24, 10));
    private static final double WRIST = .016;
    private static final double CUFF = .075;

    /** The hands are free throughout, and their fingers differ. */
    static boolean tells(List<Posed> keys) {
        return keys.stream().map(CloseUp::hand).allMatch(hand -> hand.hold() == Hand.Hold.FREE)
                && keys.stream().map(key -> hand(key).fingers()).distinct().count() > 1;
    }

    static List<Mark> marks(Posed posed) {
        FingerShape fingers = new FingerShape(BRUSH, hand(posed).fingers(), CloseUp::at, SIZE);
        List<Mark> marks = new ArrayList<>(Piece.thing(
                        Piece.FIRST,
                        BRUSH.limb(Tone.SKIN, ball(Vec.ZERO, WRIST), ball(new Vec(-CUFF, 0, 0), WRIST * 1.15)),
                        fingers.palm(Tone.SKIN))
                .inOrder());
        marks.add(BRUSH.limb(Tone.SHIRT, ball(new Vec(-CUFF, 0, 0), .022), ball(new Vec(-CUFF - .02, 0, 0), .024)));
        fingers.over(Tone.SKIN).forEach(piece -> marks.addAll(piece.inOrder()));
        return marks;
    }

    /** The pose's own name as a caption. */
    static String caption(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    private static Hand hand(Posed posed) {
        return posed.contacts().hand(Side.RIGHT);
    }

    /** Fingers up, thumb to the right, palm forward. */
    private static Vec at(Vec point) {
        return new Vec(point.y(), point.x() + CUFF + .06, point.z()).times(SIZE);
    }

    private static Ellipsoid ball(Vec point, double radius) {
        return Ellipsoid.ball(at(point), radius * SIZE);
    }

    private CloseUp() {}
}
