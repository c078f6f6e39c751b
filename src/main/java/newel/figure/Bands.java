package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import newel.body.ArmAt;
import newel.body.Hand;
import newel.body.LegAt;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** Long bands: between the hands, from a hand round a foot, round both ankles or from an ankle to the chair. */
record Bands(Brush brush, Posed posed, Set<Thing> things) {
    private static final double WIDTH = 3.4;

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (Side side : Side.values()) {
            if (posed.contacts().hand(side).hold() == Hand.Hold.BAND_FOOT) {
                pieces.add(toFoot(posed.arm(side), side));
            }
        }
        between(pieces);
        round(pieces);
        return pieces;
    }

    private void between(List<Piece> pieces) {
        Vec right = posed.rightArm().palm();
        Vec left = posed.leftArm().palm();
        if (Towel.both(posed, Hand.Hold.BAND)) {
            pieces.add(
                    Piece.thing(brush.depth(right.towards(left, .5)) - 1, brush.line(Tone.BAND, WIDTH, right, left)));
        }
    }

    private void round(List<Piece> pieces) {
        if (things.contains(Thing.BAND_ROUND_ANKLES)) {
            Vec right = ankle(posed.rightLeg());
            Vec left = ankle(posed.leftLeg());
            Vec ahead = new Vec(.022, 0, 0);
            pieces.add(Piece.thing(
                    brush.depth(right.towards(left, .5)) + 12,
                    brush.line(Tone.BAND, WIDTH, right.plus(ahead), left.plus(ahead)),
                    brush.line(Tone.BAND, WIDTH, right.minus(ahead), left.minus(ahead))));
        }
        if (things.contains(Thing.BAND_TO_CHAIR)) {
            Vec ankle = ankle(posed.rightLeg());
            Vec chairLeg = new Vec(-.11, .08, .13);
            pieces.add(Piece.thing(brush.depth(ankle) + 12, brush.line(Tone.BAND, WIDTH, chairLeg, ankle)));
        }
    }

    private static Vec ankle(LegAt leg) {
        return leg.ankle().towards(leg.knee(), .1);
    }

    private Piece toFoot(ArmAt arm, Side side) {
        LegAt leg = posed.leg(side);
        Vec sole = leg.heel().towards(leg.ball(), .7);
        return Piece.thing(brush.depth(arm.palm()) - 1, brush.line(Tone.BAND, WIDTH, arm.palm(), sole));
    }
}
