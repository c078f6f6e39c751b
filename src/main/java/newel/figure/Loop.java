package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import newel.body.Path;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** The closed way of what circles: a foot, an elbow or a shoulder. */
final class Loop {
    /** A loop's head stands clear of its beginning: this part of it is left off. */
    private static final double OPEN = 0.16;
    /** Shorter loops are no loops, statures. */
    private static final double LEAST = 0.02;
    /** An elbow that goes this much further than its shoulder circles by itself. */
    private static final double BY_ITSELF = 2;
    /** A palm that goes this much further than its elbow is at the end of a straight arm. */
    private static final double STRAIGHT = 1.2;

    private static final int STEPS = 8;

    /** One for each side that circles; empty where nothing does. */
    static List<List<Vec>> of(Scene scene) {
        if (!scene.circles() || scene.keyPoses().size() < 3) {
            return List.of();
        }
        List<Posed> keys = new Path(scene.keyPoses()).keys();
        List<Way> feet = ways(keys, side -> p -> p.leg(side).ball());
        List<Way> ways = feet.isEmpty() ? arms(keys) : feet;
        return ways.stream().map(Way::points).toList();
    }

    private static List<Way> arms(List<Posed> keys) {
        List<Way> shoulders = ways(keys, side -> p -> p.arm(side).shoulder());
        List<Way> elbows = ways(keys, side -> p -> p.arm(side).elbow());
        List<Way> palms = ways(keys, side -> p -> p.arm(side).palm());
        if (longest(elbows) < BY_ITSELF * longest(shoulders)) {
            return shoulders;
        }
        return longest(palms) > STRAIGHT * longest(elbows) ? palms : elbows;
    }

    private static double longest(List<Way> ways) {
        return ways.stream().mapToDouble(Way::length).max().orElse(0);
    }

    private static List<Way> ways(List<Posed> keys, Function<Side, Function<Posed, Vec>> point) {
        return Stream.of(Side.values())
                .map(side -> around(keys.stream().map(point.apply(side)).toList()))
                .filter(way -> way.length() > LEAST)
                .toList();
    }

    /** A smooth closed curve through points (Catmull and Rom), open at its end. */
    private static Way around(List<Vec> keys) {
        int n = keys.size();
        List<Vec> curve = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int step = 0; step < STEPS; step++) {
                curve.add(between(
                        keys.get((i + n - 1) % n),
                        keys.get(i),
                        keys.get((i + 1) % n),
                        keys.get((i + 2) % n),
                        (double) step / STEPS));
            }
        }
        return new Way(Piece.What.THING, curve.subList(0, (int) (curve.size() * (1 - OPEN))));
    }

    private static Vec between(Vec before, Vec a, Vec b, Vec after, double t) {
        Vec linear = b.minus(before);
        Vec square = before.times(2).minus(a.times(5)).plus(b.times(4)).minus(after);
        Vec cube = a.times(3).minus(before).minus(b.times(3)).plus(after);
        return a.plus(linear.times(t / 2)).plus(square.times(t * t / 2)).plus(cube.times(t * t * t / 2));
    }

    private Loop() {}
}
