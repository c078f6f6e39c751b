package newel.figure;

import java.util.List;

/** Puts a small arrow, enlarged, where the figure is not. */
final class Beside {
    private static final double[] DISTANCES = {0, 12, 18, 24, 30, 38, 46};
    private static final int DIRECTIONS = 16;
    /** Across the movement is better than along it, points of distance. */
    private static final double ALONG = 10;
    /** An arrow wholly over the figure is as bad as one this much further off, points. */
    private static final double HIDDEN = 60;
    /** Each point below the floor is as bad as this many points of distance. */
    private static final double UNDER_FLOOR = 20;

    private static final double CLEAR = 6;

    private record Shape(List<Spot> outline, Bounds bounds) {
        boolean covers(Spot spot) {
            return bounds.holds(spot) && (inside(spot) || near(spot));
        }

        private boolean near(Spot spot) {
            return outline.stream().anyMatch(corner -> corner.distance(spot) < CLEAR);
        }

        private boolean inside(Spot s) {
            boolean inside = false;
            for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
                Spot a = outline.get(i);
                Spot b = outline.get(j);
                boolean crosses = a.y() > s.y() != b.y() > s.y();
                if (crosses && s.x() < (b.x() - a.x()) * (s.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                    inside = !inside;
                }
            }
            return inside;
        }
    }

    private final List<Shape> figure;

    Beside(List<Piece> figure) {
        this.figure = figure.stream()
                .flatMap(piece -> piece.marks().stream())
                .filter(mark -> mark instanceof Mark.Outline)
                .map(mark -> new Shape(mark.spots(), Bounds.of(mark.spots()).grown(CLEAR)))
                .toList();
    }

    List<Spot> place(List<Spot> way, double scale) {
        List<Spot> best = way;
        double least = Double.POSITIVE_INFINITY;
        for (double distance : DISTANCES) {
            for (int i = 0; i < DIRECTIONS && distance < least; i++) {
                double angle = 2 * Math.PI * i / DIRECTIONS;
                double x = distance * Math.cos(angle);
                double y = distance * Math.sin(angle);
                List<Spot> moved = Stroke.scaled(way, scale, x, y);
                double cost = distance + ALONG * along(way, Math.cos(angle), Math.sin(angle)) + cost(moved);
                if (cost < least) {
                    least = cost;
                    best = moved;
                }
            }
        }
        return best;
    }

    /** How far a direction runs along a way, 0 to 1. */
    private static double along(List<Spot> way, double x, double y) {
        Spot from = way.getFirst();
        Spot to = way.getLast();
        return Math.abs(x * (to.x() - from.x()) + y * (to.y() - from.y())) / Math.max(1e-6, from.distance(to));
    }

    private double cost(List<Spot> spots) {
        long hidden = spots.stream().filter(this::covered).count();
        double lowest = Bounds.of(spots).bottom();
        return HIDDEN * hidden / spots.size() + UNDER_FLOOR * Math.max(0, lowest + 4);
    }

    private boolean covered(Spot spot) {
        return figure.stream().anyMatch(shape -> shape.covers(spot));
    }
}
