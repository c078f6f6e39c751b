package newel.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import newel.body.Path;
import newel.body.Posed;
import newel.body.Vec;

/** Arrows along the true path of what moves most: hands, feet, or the head when the trunk leads. */
final class Trail {
    private static final int STEPS = 14;
    /** Moves of less than this many statures get no arrow. */
    private static final double VISIBLE = 0.035;
    /** A part gets an arrow when it moves at least this share of the part that moves most. */
    private static final double LEADS = 0.55;
    /** Two arrows closer than this, in points, would be one on top of the other. */
    private static final double SAME = 12;

    private static final double HEAD = 10;

    private final Camera camera;
    private final Path path;
    private final int leg;

    /** @param leg the arrow runs from this key pose to the next */
    Trail(Camera camera, Path path, int leg) {
        this.camera = camera;
        this.path = path;
        this.leg = leg;
    }

    List<Mark> arrows() {
        Map<String, List<Vec>> ways = new TreeMap<>();
        parts().forEach((name, part) -> ways.put(name, way(part)));
        double most = ways.values().stream().mapToDouble(Trail::length).max().orElse(0);
        List<List<Vec>> led = ways.values().stream()
                .filter(way -> length(way) > VISIBLE && length(way) >= LEADS * most)
                .sorted(Comparator.comparingDouble(
                        way -> -camera.see(way.getLast()).depth()))
                .toList();
        List<Mark> arrows = new ArrayList<>();
        List<List<Spot>> drawn = new ArrayList<>();
        for (List<Vec> way : led) {
            List<Spot> spots = way.stream().map(camera::see).toList();
            if (drawn.stream().noneMatch(other -> near(other, spots)) && drawn.size() < 2) {
                drawn.add(spots);
                arrows.add(arrow(spots));
            }
        }
        return arrows;
    }

    private static Map<String, Function<Posed, Vec>> parts() {
        return Map.of(
                "right hand", p -> p.rightArm().palm(),
                "left hand", p -> p.leftArm().palm(),
                "right foot", p -> p.rightLeg().ankle(),
                "left foot", p -> p.leftLeg().ankle(),
                "head", p -> p.trunk().nose(),
                "right shoulder", p -> p.rightArm().shoulder(),
                "toes right", p -> p.rightLeg().ball(),
                "toes left", p -> p.leftLeg().ball(),
                "hips", p -> p.trunk().pelvis());
    }

    private List<Vec> way(Function<Posed, Vec> part) {
        List<Vec> way = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            way.add(part.apply(path.at(leg, (double) i / STEPS)));
        }
        return way;
    }

    private static double length(List<Vec> way) {
        double sum = 0;
        for (int i = 1; i < way.size(); i++) {
            sum += way.get(i).distance(way.get(i - 1));
        }
        return sum;
    }

    private static boolean near(List<Spot> a, List<Spot> b) {
        return a.getFirst().distance(b.getFirst()) < SAME && a.getLast().distance(b.getLast()) < SAME;
    }

    private static Mark arrow(List<Spot> spots) {
        Spot tip = spots.getLast();
        Spot before = spots.get(0);
        for (Spot spot : spots) {
            if (spot.distance(tip) > HEAD) {
                before = spot;
            }
        }
        double length = Math.max(1e-6, before.distance(tip));
        double x = (tip.x() - before.x()) / length;
        double y = (tip.y() - before.y()) / length;
        Spot left = new Spot(tip.x() - HEAD * x - .55 * HEAD * y, tip.y() - HEAD * y + .55 * HEAD * x, 0);
        Spot right = new Spot(tip.x() - HEAD * x + .55 * HEAD * y, tip.y() - HEAD * y - .55 * HEAD * x, 0);
        List<Spot> line = new ArrayList<>(
                spots.stream().filter(s -> s.distance(tip) > .6 * HEAD).toList());
        line.add(new Spot(tip.x() - .7 * HEAD * x, tip.y() - .7 * HEAD * y, 0));
        return new Mark.Arrow(line, List.of(tip, left, right));
    }
}
