package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import newel.body.KeyPose;
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

    /** One for each side that circles; empty where nothing does. */
    static List<List<Vec>> of(Scene scene) {
        if (!scene.circles() || scene.keyPoses().size() < 3) {
            return List.of();
        }
        List<KeyPose> round = new ArrayList<>(scene.keyPoses());
        round.add(round.getFirst());
        Path path = new Path(round);
        List<Way> feet = ways(path, side -> p -> p.leg(side).ball());
        if (!feet.isEmpty()) {
            return feet.stream().map(Way::points).toList();
        }
        List<Way> shoulders = ways(path, side -> p -> p.arm(side).shoulder());
        List<Way> elbows = ways(path, side -> p -> p.arm(side).elbow());
        return (longest(elbows) > BY_ITSELF * longest(shoulders) ? elbows : shoulders)
                .stream().map(Way::points).toList();
    }

    private static double longest(List<Way> ways) {
        return ways.stream().mapToDouble(Way::length).max().orElse(0);
    }

    private static List<Way> ways(Path path, Function<Side, Function<Posed, Vec>> point) {
        return Stream.of(Side.values())
                .map(side -> around(path, point.apply(side)))
                .filter(way -> way.length() > LEAST)
                .toList();
    }

    private static Way around(Path path, Function<Posed, Vec> point) {
        List<Vec> points = new ArrayList<>();
        for (int leg = 0; leg < path.legs(); leg++) {
            points.addAll(Way.of(Piece.What.THING, path, leg, point).points());
        }
        return new Way(Piece.What.THING, points.subList(0, (int) (points.size() * (1 - OPEN))));
    }

    private Loop() {}
}
