package newel.figure;

import java.util.Comparator;
import java.util.List;

/** Puts a small arrow, enlarged, where the figure is not. */
record Beside(List<Piece> figure) {
    private static final double[] DISTANCES = {0, 12, 18, 24, 30, 38, 46};
    private static final int DIRECTIONS = 16;
    /** Across the movement is better than along it, points of distance. */
    private static final double ALONG = 10;

    List<Spot> place(List<Spot> way, double scale) {
        List<Spot> best = null;
        double least = Double.POSITIVE_INFINITY;
        Spot from = way.getFirst();
        Spot to = way.getLast();
        double length = Math.max(1e-6, from.distance(to));
        for (double distance : DISTANCES) {
            for (int i = 0; i < DIRECTIONS; i++) {
                double x = Math.cos(2 * Math.PI * i / DIRECTIONS);
                double y = Math.sin(2 * Math.PI * i / DIRECTIONS);
                List<Spot> moved = Stroke.scaled(way, scale, distance * x, distance * y);
                double along = Math.abs(x * (to.x() - from.x()) + y * (to.y() - from.y())) / length;
                double cost = distance
                        + ALONG * along
                        + 60 * hidden(moved)
                        + Math.max(0, moved.getLast().y() + 4) * 20;
                if (cost < least) {
                    least = cost;
                    best = moved;
                }
            }
        }
        return best;
    }

    /** The share of an arrow that lies over the figure or close to it. */
    private double hidden(List<Spot> spots) {
        return spots.stream().filter(this::covered).count() / (double) spots.size();
    }

    private boolean covered(Spot spot) {
        return figure.stream()
                .flatMap(piece -> piece.marks().stream())
                .filter(mark -> mark instanceof Mark.Outline)
                .anyMatch(mark -> inside(mark.spots(), spot) || near(mark.spots(), spot));
    }

    private static boolean near(List<Spot> outline, Spot spot) {
        return outline.stream()
                        .min(Comparator.comparingDouble(spot::distance))
                        .orElseThrow()
                        .distance(spot)
                < 6;
    }

    private static boolean inside(List<Spot> outline, Spot s) {
        boolean inside = false;
        for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
            Spot a = outline.get(i);
            Spot b = outline.get(j);
            if (a.y() > s.y() != b.y() > s.y() && s.x() < (b.x() - a.x()) * (s.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }
}
