package newel.figure;

import java.util.List;
import newel.body.Furniture;
import newel.body.LegAt;
import newel.body.Posed;
import newel.body.Rot;
import newel.body.Side;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** Cushions and towels that lie somewhere, and a bag on the floor. */
final class Soft {
    static final double CUSHION = 0.035;

    static Piece cushionOnSeat(Brush brush, Chair chair) {
        double x = chair.back().x() + Furniture.SEAT_DEPTH / 2;
        Mark mark =
                slab(brush, Tone.CUSHION, new Vec(x, chair.seat() + CUSHION / 2, 0), Rot.NONE, .10, CUSHION / 2, .115);
        return Piece.thing(brush.depth(new Vec(x, chair.seat() + CUSHION, 0)) + .5, mark);
    }

    static Piece cushionAtBack(Brush brush, Chair chair, Posed posed) {
        Vec low = posed.trunk().lumbosacral();
        Vec at = new Vec((chair.back().x() + low.x() - .07) / 2, low.y() + .02, 0);
        Mark mark = slab(brush, Tone.CUSHION, at, Rot.aboutZ(90), .085, .026, .115);
        return Piece.thing(brush.depth(at) - 1, mark);
    }

    /** A rolled towel lies across under a leg. */
    static Piece roll(Brush brush, Vec under, double surface) {
        double radius = Math.max(.026, Math.min(.04, (under.y() - surface - .02) / 2));
        Vec middle = new Vec(under.x(), surface + radius, under.z());
        Ellipsoid inner = end(middle, -.09, radius);
        Ellipsoid outer = end(middle, .09, radius);
        Ellipsoid near = brush.towards(new Vec(0, 0, 1)) > 0 ? outer : inner;
        return Piece.thing(
                brush.depth(middle),
                brush.limb(Tone.TOWEL, inner, outer),
                brush.line(Tone.TOWEL_EDGE, 1.2, coil(near.centre(), radius * .65)));
    }

    private static Ellipsoid end(Vec middle, double right, double radius) {
        return new Ellipsoid(middle.plus(new Vec(0, 0, right)), Rot.NONE, radius, radius, .004);
    }

    private static List<Vec> coil(Vec middle, double radius) {
        return java.util.stream.IntStream.rangeClosed(0, 14)
                .mapToObj(
                        i -> middle.plus(new Vec(Math.cos(i * .7), Math.sin(i * .7), 0).times(radius * (1 - i / 20.0))))
                .toList();
    }

    /** A towel spread under a foot, so that it slides. */
    static Piece underFoot(Brush brush, LegAt leg, Side side) {
        Vec middle = leg.heel().towards(leg.ball(), .6);
        Mark mark = slab(brush, Tone.TOWEL, new Vec(middle.x(), .004, middle.z()), Rot.NONE, .12, .004, .05);
        return Piece.thing(brush.depth(middle) - 40, mark);
    }

    static Piece cushion(Brush brush, Vec middle, double halfHigh) {
        return Piece.thing(brush.depth(middle), slab(brush, Tone.CUSHION, middle, Rot.NONE, .06, halfHigh, .045));
    }

    /** A folded towel under a hand that wipes. */
    static Piece underHand(Brush brush, Vec palm) {
        Vec middle = palm.plus(new Vec(.012, -.012, 0));
        Mark mark = slab(brush, Tone.TOWEL, middle, Rot.NONE, .045, .006, .05);
        return Piece.thing(brush.depth(palm) - .5, mark);
    }

    static Piece bagOnFloor(Brush brush, Vec at) {
        return Piece.thing(
                brush.depth(at),
                brush.line(
                        Tone.BAG,
                        2.6,
                        at.plus(new Vec(-.03, .12, 0)),
                        at.plus(new Vec(-.02, .17, 0)),
                        at.plus(new Vec(.02, .17, 0)),
                        at.plus(new Vec(.03, .12, 0))),
                slab(brush, Tone.BAG, at.plus(new Vec(0, .065, 0)), Rot.NONE, .035, .06, .03));
    }

    private static Mark slab(Brush brush, Tone tone, Vec middle, Rot turn, double x, double y, double z) {
        double round = Math.min(.025, y);
        Ellipsoid[] corners = new Ellipsoid[8];
        for (int i = 0; i < corners.length; i++) {
            Vec corner = new Vec((i & 1) == 0 ? -x : x, (y - round) * ((i & 4) == 0 ? -1 : 1), (i & 2) == 0 ? -z : z);
            corners[i] = new Ellipsoid(middle.plus(turn.of(corner)), turn, .02, round, .02);
        }
        return brush.limb(tone, corners);
    }

    private Soft() {}
}
