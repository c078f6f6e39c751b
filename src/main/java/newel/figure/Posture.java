package newel.figure;

import newel.body.Ground;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.TrunkAt;
import newel.body.Vec;

/**
 * The bearing of an older person, which poses do not say: the head a little ahead of the shoulders. Left out where
 * something holds the head: a pillow, or a hand.
 */
final class Posture {
    /** Statures, design choice: about 2 cm. */
    private static final Vec AHEAD = new Vec(0.013, -0.004, 0);

    static TrunkAt head(Posed posed) {
        TrunkAt t = posed.trunk();
        Vec shift = held(posed) ? Vec.ZERO : t.thoraxTurn().of(AHEAD);
        return new TrunkAt(
                t.pelvis(),
                t.lumbosacral(),
                t.waist(),
                t.c7(),
                t.skullBase().plus(shift),
                t.pelvisTurn(),
                t.lumbarTurn(),
                t.thoraxTurn(),
                t.neckTurn(),
                t.headTurn());
    }

    private static boolean held(Posed posed) {
        return posed.contacts().ground() == Ground.BED
                || posed.contacts().rightHand().hold() == Hand.Hold.HEAD
                || posed.contacts().leftHand().hold() == Hand.Hold.HEAD;
    }

    private Posture() {}
}
