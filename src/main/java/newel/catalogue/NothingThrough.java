package newel.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import newel.body.Furniture;
import newel.body.Ground;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** Nothing goes through the floor, the seat or the bed. */
final class NothingThrough implements BodyRule {
    /** Rounding of solved feet, statures. */
    private static final double ROUNDING = 0.012;
    /** Half the width that a lying body keeps to the bed, statures; what is further out may hang over the edge. */
    private static final double ON_THE_BED = 0.06;

    @Override
    public Stream<Flaw> flaws(Movement movement, Map<String, Doing> doings) {
        return doings.values().stream().flatMap(NothingThrough::flaws);
    }

    private static Stream<Flaw> flaws(Doing doing) {
        return Stream.of(
                        through(doing, "the floor", NothingThrough::underFloor),
                        through(doing, "the seat", NothingThrough::inSeat),
                        through(doing, "the bed", NothingThrough::inBed))
                .flatMap(flaws -> flaws);
    }

    private static Stream<Flaw> through(Doing doing, String what, ToDoubleFunction<Posed> depth) {
        return doing.firstKey(
                posed -> depth.applyAsDouble(posed) > ROUNDING,
                posed -> String.format(
                        Locale.ROOT, "something goes through %s by %.3f H", what, depth.applyAsDouble(posed)));
    }

    private static double underFloor(Posed posed) {
        return depth(feet(posed), 0);
    }

    /** Hands and elbows may hang beside a seat, but not inside it. */
    private static double inSeat(Posed posed) {
        Ground ground = posed.contacts().ground();
        boolean sits = ground == Ground.SEAT_BACK || ground == Ground.SEAT_EDGE;
        double behind = ground == Ground.SEAT_EDGE ? Furniture.SEAT_DEPTH : Furniture.SEAT_DEPTH / 2;
        Stream<Vec> inside = arms(posed)
                .filter(point -> Math.abs(point.z()) < Furniture.SEAT_HALF_WIDTH - ROUNDING)
                .filter(point -> point.x() > -behind && point.x() < Furniture.SEAT_DEPTH - behind);
        return sits ? depth(inside, posed.contacts().seatHeight()) : 0;
    }

    private static double inBed(Posed posed) {
        Stream<Vec> inside = Stream.concat(arms(posed), Stream.concat(feet(posed), knees(posed)))
                .filter(point -> Math.abs(point.z()) < ON_THE_BED);
        return posed.contacts().ground() == Ground.BED ? depth(inside, Furniture.BED) : 0;
    }

    private static double depth(Stream<Vec> points, double surface) {
        return points.mapToDouble(point -> surface - point.y()).max().orElse(0);
    }

    private static Stream<Vec> feet(Posed posed) {
        return sides(side -> Stream.of(
                posed.leg(side).ankle(), posed.leg(side).heel(), posed.leg(side).ball(), posed.toe(side)));
    }

    private static Stream<Vec> knees(Posed posed) {
        return sides(side -> Stream.of(posed.leg(side).knee()));
    }

    private static Stream<Vec> arms(Posed posed) {
        return sides(side -> Stream.of(
                posed.arm(side).elbow(),
                posed.arm(side).wrist(),
                posed.arm(side).palm()));
    }

    private static Stream<Vec> sides(Function<Side, Stream<Vec>> points) {
        return List.of(Side.values()).stream().flatMap(points);
    }
}
