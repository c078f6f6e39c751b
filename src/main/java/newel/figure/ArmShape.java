package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.ArmAt;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** An arm in a short sleeve. Half widths in statures after the circumferences of ANSUR II divided by 2π. */
record ArmShape(Brush brush, Posed posed, Girth girth) {
    /** A hand lies this much nearer than what it holds, points. */
    private static final double OVER = 3;

    List<Piece> pieces(Side side, boolean far) {
        ArmAt a = posed.arm(side);
        Tone skin = far ? Tone.SKIN_FAR : Tone.SKIN;
        Hand held = posed.contacts().hand(side);
        HandShape hand = new HandShape(brush, a, side, held);
        Piece arm = new Piece(Piece.What.arm(side), depth(a), arm(a, far, skin, hand));
        // Drawn once more over what it holds, without an edge, which would cut it off at the wrist.
        List<Mark> over = hand.marks(skin).stream().map(Mark::withoutEdge).toList();
        return held.hold() == Hand.Hold.FREE
                ? List.of(arm)
                : List.of(arm, new Piece(Piece.What.THING, brush.depth(a.palm()) + OVER, over));
    }

    private List<Mark> arm(ArmAt a, boolean far, Tone skin, HandShape hand) {
        Vec sleeve = a.shoulder().towards(a.elbow(), .62);
        List<Mark> marks = new ArrayList<>();
        marks.add(brush.limb(
                skin, ball(a.elbow(), .0255), ball(a.elbow().towards(a.wrist(), .28), .0275), ball(a.wrist(), .0165)));
        marks.add(brush.limb(skin, ball(sleeve, .028), ball(a.elbow(), .0255)));
        marks.addAll(hand.marks(skin));
        marks.add(brush.limb(far ? Tone.SHIRT_FAR : Tone.SHIRT, ball(a.shoulder(), .0365), ball(sleeve, .0335)));
        return marks;
    }

    private double depth(ArmAt a) {
        return brush.depth(a.elbow().towards(a.shoulder(), .4)) + brush.depth(a.wrist()) * 1e-3;
    }

    private Ellipsoid ball(Vec centre, double radius) {
        return Ellipsoid.ball(centre, radius * girth.limbs());
    }
}
