package newel.figure;

import java.util.ArrayList;
import java.util.List;

/** Lines of the picture made into arrows. */
final class Stroke {
    private static final double HEAD = 13;
    private static final double LEAST_HEAD = 9;
    private static final double HALF_HEAD = 0.52;

    static double length(List<Spot> spots) {
        double sum = 0;
        for (int i = 1; i < spots.size(); i++) {
            sum += spots.get(i).distance(spots.get(i - 1));
        }
        return sum;
    }

    /** An arrow whose tip is the last spot. */
    static Mark arrow(List<Spot> spots) {
        Spot tip = spots.getLast();
        double head = Math.max(LEAST_HEAD, Math.min(HEAD, 0.45 * length(spots)));
        Spot before = before(spots, head);
        double length = Math.max(1e-6, before.distance(tip));
        double x = (tip.x() - before.x()) / length;
        double y = (tip.y() - before.y()) / length;
        List<Spot> line = new ArrayList<>(
                spots.stream().filter(s -> s.distance(tip) > .75 * head).toList());
        line.add(back(tip, x, y, .7 * head, 0));
        if (line.size() == 1) {
            line.addFirst(spots.getFirst());
        }
        return new Mark.Arrow(
                line, List.of(tip, back(tip, x, y, head, HALF_HEAD * head), back(tip, x, y, head, -HALF_HEAD * head)));
    }

    /** The last spot that is a head's length from the tip, so that the head follows the curve. */
    private static Spot before(List<Spot> spots, double head) {
        Spot before = spots.getFirst();
        for (Spot spot : spots) {
            if (spot.distance(spots.getLast()) > head) {
                before = spot;
            }
        }
        return before;
    }

    private static Spot back(Spot tip, double x, double y, double along, double aside) {
        return new Spot(tip.x() - along * x - aside * y, tip.y() - along * y + aside * x, 0);
    }

    static Spot middle(List<Spot> spots) {
        Bounds bounds = Bounds.of(spots);
        return new Spot((bounds.left() + bounds.right()) / 2, (bounds.top() + bounds.bottom()) / 2, 0);
    }

    /** Larger about its own middle, and moved: true in direction and shape. */
    static List<Spot> scaled(List<Spot> spots, double by, double right, double down) {
        Spot middle = middle(spots);
        return spots.stream()
                .map(s -> new Spot(
                        middle.x() + by * (s.x() - middle.x()) + right,
                        middle.y() + by * (s.y() - middle.y()) + down,
                        0))
                .toList();
    }

    private Stroke() {}
}
