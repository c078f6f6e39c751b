package newel.figure;

import java.util.List;
import newel.body.Furniture;
import newel.body.Vec;

/** A kitchen counter in front of a hand, or beside it when the hand is well out to the side. */
final class Counter {
    private static final double TOP = 0.025;
    private static final double OVERHANG = 0.02;

    static List<Piece> pieces(Camera camera, Vec hand) {
        boolean beside = Math.abs(hand.z()) > 0.15 && hand.x() < 0.2;
        int side = hand.z() < 0 ? -1 : 1;
        double x0 = beside ? -0.35 : hand.x() - 0.03;
        double x1 = beside ? 0.5 : hand.x() + 0.30;
        double z0 = beside ? Math.min(hand.z() - side * .03, hand.z() + side * .3) : -0.34;
        double z1 = beside ? Math.max(hand.z() - side * .03, hand.z() + side * .3) : 0.34;
        double top = Furniture.COUNTER;
        Box body = new Box(x0 + OVERHANG, x1, 0, top - TOP, z0 + OVERHANG, z1 - OVERHANG);
        Box slab = new Box(x0, x1, top - TOP, top, z0, z1);
        return List.of(body.piece(camera, Tone.COUNTER), slab.piece(camera, Tone.COUNTER_TOP));
    }

    private Counter() {}
}
