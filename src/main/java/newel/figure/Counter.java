package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Furniture;
import newel.body.Vec;

/**
 * A kitchen counter: doors above a plinth, under a worktop whose edge stands out.
 *
 * @param beside it stands beside the person and runs along X; else before or behind them, along Z
 * @param side at their right or before them 1, at their left or behind them −1
 */
record Counter(double edge, boolean beside, int side, boolean sink) {
    private static final double TOP = 0.025;
    private static final double OVERHANG = 0.02;
    private static final double DEEP = 0.30;
    private static final double PLINTH = 0.055;
    private static final double HAND_IN = 0.03;

    /** In front of a hand, or beside it when the hand is well out to the side. */
    static Counter at(Vec hand, boolean sink) {
        boolean beside = Math.abs(hand.z()) > 0.15 && hand.x() < 0.2;
        int side = hand.z() < 0 ? -1 : 1;
        return beside
                ? new Counter(hand.z() - side * HAND_IN, true, side, sink)
                : new Counter(hand.x() - HAND_IN, false, 1, sink);
    }

    static Counter behind(double edge) {
        return new Counter(edge, false, -1, false);
    }

    /** At the left hand. */
    static Counter near() {
        return new Counter(-0.26, true, -1, false);
    }

    List<Piece> pieces(Brush brush) {
        double high = Furniture.COUNTER - TOP;
        List<Mark> body = new ArrayList<>();
        body.add(block(.05, DEEP, 0, PLINTH, OVERHANG).outline(brush, Tone.COUNTER_TOP));
        body.add(block(OVERHANG, DEEP, PLINTH, high, OVERHANG).outline(brush, Tone.COUNTER));
        doors(brush, body, high);
        Box slab = block(0, DEEP, high, Furniture.COUNTER, 0);
        List<Mark> top = new ArrayList<>(List.of(slab.outline(brush, Tone.COUNTER_TOP), slab.top(brush, Tone.WORKTOP)));
        if (sink) {
            tap(brush, top);
        }
        // The slab's own depth, so that it is never parted from its body.
        double depth = brush.depth(slab.middle());
        return List.of(new Piece(Piece.What.THING, depth - 1, body), new Piece(Piece.What.THING, depth, top));
    }

    /** A block of the counter: from and to are measured inward from its edge, `in` from its two ends. */
    private Box block(double from, double to, double low, double high, double in) {
        double ends = beside ? 0.42 : 0.34;
        return beside
                ? Box.between(-ends + in, ends - in + .08, low, high, edge + side * from, edge + side * to)
                : Box.between(edge + side * from, edge + side * to, low, high, -ends + in, ends - in);
    }

    /** Gaps between the doors and their handles, when the front is seen. */
    private void doors(Brush brush, List<Mark> marks, double high) {
        Vec out = beside ? new Vec(0, 0, -side) : new Vec(-side, 0, 0);
        if (brush.towards(out) < 0.15) {
            return;
        }
        for (double at : new double[] {-.11, .11}) {
            marks.add(brush.line(Tone.COUNTER_LINE, 1.4, front(at, PLINTH + .01), front(at, high - .01)));
        }
        for (double at : new double[] {-.15, .07, .15}) {
            marks.add(brush.line(Tone.COUNTER_LINE, 2.2, front(at, high - .09), front(at, high - .03)));
        }
    }

    private Vec front(double along, double high) {
        return beside ? new Vec(along, high, edge + side * OVERHANG) : new Vec(edge + side * OVERHANG, high, along);
    }

    private void tap(Brush brush, List<Mark> marks) {
        double y = Furniture.COUNTER;
        double z = beside ? 0 : .2;
        marks.add(brush.line(
                Tone.METAL,
                3,
                inward(.24, y, z),
                inward(.24, y + .09, z),
                inward(.20, y + .11, z),
                inward(.16, y + .08, z)));
    }

    private Vec inward(double in, double y, double along) {
        return beside ? new Vec(along, y, edge + side * in) : new Vec(edge + side * in, y, along);
    }
}
