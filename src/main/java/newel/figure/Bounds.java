package newel.figure;

import java.util.Collection;

/** An upright rectangle of the picture; Y grows downward. */
public record Bounds(double left, double top, double right, double bottom) {
    private static final Bounds NOTHING = new Bounds(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    static Bounds of(Collection<Spot> spots) {
        return spots.stream().map(Bounds::at).reduce(NOTHING, Bounds::with);
    }

    private static Bounds at(Spot spot) {
        return new Bounds(spot.x(), spot.y(), spot.x(), spot.y());
    }

    Bounds with(Bounds o) {
        return new Bounds(
                Math.min(left, o.left), Math.min(top, o.top), Math.max(right, o.right), Math.max(bottom, o.bottom));
    }

    Bounds grown(double by) {
        return new Bounds(left - by, top - by, right + by, bottom + by);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    boolean holds(Spot spot) {
        return spot.x() >= left && spot.x() <= right && spot.y() >= top && spot.y() <= bottom;
    }
}
