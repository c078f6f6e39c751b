package newel.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import newel.body.Path;
import newel.body.Posed;
import newel.body.Vec;

/** Arrows along the true path of what moves most: hands, feet, or the head when the trunk leads. */
final class Trail {
    private static final int STEPS = 14;
    /** Moves of less than this many statures get no arrow. */
    private static final double VISIBLE = 0.014;
    /** A part gets an arrow when it moves at least this share of the part that moves most. */
    private static final double LEADS = 0.55;
    /** Two arrows closer than this, in points, would be one on top of the other. */
    private static final double SAME = 12;

    private static final double SEEN = 3;
    private static final double HEAD_LENGTH = 10;

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
        List<List<Vec>> ways = new ArrayList<>();
        for (List<Function<Posed, Vec>> limb : limbs()) {
            ways.add(limb.stream()
                    .map(this::way)
                    .max(Comparator.comparingDouble(Trail::length))
                    .orElseThrow());
        }
        double most = ways.stream().mapToDouble(Trail::length).max().orElse(0);
        List<List<Vec>> led = ways.stream()
                .filter(way -> length(way) > VISIBLE && length(way) >= LEADS * most && seen(way))
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

    /** One arrow at most for each limb and for the trunk: that of the point on it that goes furthest. */
    private static List<List<Function<Posed, Vec>>> limbs() {
        return List.of(
                List.of(p -> p.rightArm().palm()),
                List.of(p -> p.leftArm().palm()),
                List.of(p -> p.rightLeg().ankle(), p -> p.rightLeg().ball()),
                List.of(p -> p.leftLeg().ankle(), p -> p.leftLeg().ball()),
                List.of(
                        p -> p.trunk().crown(),
                        p -> p.trunk().nose(),
                        p -> p.rightArm().shoulder(),
                        p -> p.trunk().pelvis()));
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

    /** A way straight towards the viewer draws as a dot and tells nothing. */
    private boolean seen(List<Vec> way) {
        return drawnLength(way.stream().map(camera::see).toList()) > SEEN;
    }

    private static double drawnLength(List<Spot> spots) {
        double sum = 0;
        for (int i = 1; i < spots.size(); i++) {
            sum += spots.get(i).distance(spots.get(i - 1));
        }
        return sum;
    }

    private static boolean near(List<Spot> a, List<Spot> b) {
        return a.getFirst().distance(b.getFirst()) < SAME && a.getLast().distance(b.getLast()) < SAME;
    }

    private static Mark arrow(List<Spot> spots) {
        Spot tip = spots.getLast();
        double head = Math.max(5, Math.min(HEAD_LENGTH, 0.6 * drawnLength(spots)));
        Spot before = spots.get(0);
        for (Spot spot : spots) {
            if (spot.distance(tip) > head) {
                before = spot;
            }
        }
        double length = Math.max(1e-6, before.distance(tip));
        double x = (tip.x() - before.x()) / length;
        double y = (tip.y() - before.y()) / length;
        Spot left = new Spot(tip.x() - head * x - .55 * head * y, tip.y() - head * y + .55 * head * x, 0);
        Spot right = new Spot(tip.x() - head * x + .55 * head * y, tip.y() - head * y - .55 * head * x, 0);
        List<Spot> line = new ArrayList<>(
                spots.stream().filter(s -> s.distance(tip) > .6 * head).toList());
        line.add(new Spot(tip.x() - .7 * head * x, tip.y() - .7 * head * y, 0));
        return new Mark.Arrow(line, List.of(tip, left, right));
    }
}
