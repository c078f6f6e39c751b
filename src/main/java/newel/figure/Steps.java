package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Foot;
import newel.body.Furniture;
import newel.body.Rot;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** What feet are set upon: a step, a flight with its rail, a stool. */
final class Steps {
    private static final double HALF_WIDTH = 0.18;
    private static final double TREAD = 0.17;
    private static final double NOSE = 0.012;
    /** Higher than a step and lower than a seat: a stool. */
    private static final double STOOL_FROM = 0.105;

    private static final double STOOL_LEG = 0.013;

    /** Under one foot. On its ball the foot stands at the front edge; on its heel or sole it is well on. */
    static List<Piece> under(Brush brush, Foot foot, boolean flight) {
        if (foot.height() > STOOL_FROM && !flight) {
            return stool(brush, new Vec(foot.x() + .02, foot.height(), foot.z()), .13, .13);
        }
        double front = foot.placement() == Foot.Placement.BALL ? foot.x() + .045 : foot.x() - .06;
        List<Piece> pieces = new ArrayList<>();
        pieces.addAll(step(brush, front, front + (flight ? 2.6 : 1.3) * TREAD, foot.height()));
        if (flight) {
            pieces.addAll(step(brush, front + TREAD, front + 2.6 * TREAD, 2 * foot.height()));
            pieces.addAll(step(brush, front + 2 * TREAD, front + 2.6 * TREAD, 3 * foot.height()));
        }
        return pieces;
    }

    private static List<Piece> step(Brush brush, double front, double back, double high) {
        Box riser = Box.between(front + NOSE, back, 0, high - .018, -HALF_WIDTH, HALF_WIDTH);
        Box tread = Box.between(front, back, high - .018, high, -HALF_WIDTH, HALF_WIDTH);
        double depth = brush.depth(tread.middle());
        return List.of(
                new Piece(Piece.What.THING, depth - .5, List.of(riser.outline(brush, Tone.STEP))),
                new Piece(
                        Piece.What.THING,
                        depth,
                        List.of(tread.outline(brush, Tone.STEP_EDGE), tread.top(brush, Tone.STEP_TOP))));
    }

    /** @param middle of its upper face */
    static List<Piece> stool(Brush brush, Vec middle, double halfLong, double halfWide) {
        List<Piece> pieces = new ArrayList<>();
        for (int end : new int[] {-1, 1}) {
            for (int side : new int[] {-1, 1}) {
                double x = middle.x() + end * (halfLong - .025);
                double z = middle.z() + side * (halfWide - .025);
                pieces.add(Box.between(x - STOOL_LEG, x + STOOL_LEG, 0, middle.y() - .02, z - STOOL_LEG, z + STOOL_LEG)
                        .piece(brush, Tone.WOOD_DARK));
            }
        }
        pieces.add(Box.between(
                        middle.x() - halfLong,
                        middle.x() + halfLong,
                        middle.y() - .02,
                        middle.y(),
                        middle.z() - halfWide,
                        middle.z() + halfWide)
                .piece(brush, Tone.WOOD_EDGE, Tone.WOOD));
        return pieces;
    }

    /** A handrail through a hand, rising with the stair, on two posts. */
    static Piece rail(Brush brush, Vec hand, double slope) {
        List<Mark> marks = new ArrayList<>();
        Vec along = new Vec(1, slope, 0).unit();
        for (double at : new double[] {-.10, .26}) {
            Vec top = hand.plus(along.times(at));
            marks.add(brush.line(Tone.WOOD_DARK, 4, new Vec(top.x(), 0, top.z()), top));
        }
        marks.add(brush.limb(Tone.WOOD_DARK, bar(hand.plus(along.times(-.13))), bar(hand.plus(along.times(.30)))));
        return new Piece(Piece.What.THING, brush.depth(hand) - 3, marks);
    }

    private static Ellipsoid bar(Vec at) {
        return new Ellipsoid(at, Rot.NONE, .013, .013, .013);
    }

    /** Whether a foot stands on something above the floor that is neither seat nor bed. */
    static boolean raised(Foot foot) {
        return foot.placed() && foot.height() > 0.02 && foot.height() < Furniture.SEAT - .02;
    }

    private Steps() {}
}
