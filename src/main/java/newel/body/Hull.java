package newel.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The convex hull of points that carry two coordinates, whatever else they carry.
 *
 * @param flat twice the area of a triangle up to which its three corners count as one line
 */
public record Hull<T>(ToDoubleFunction<T> x, ToDoubleFunction<T> y, double flat) {
    /** Andrew's monotone chain, from the least x, anticlockwise where y grows upward; points on an edge are left out. */
    public List<T> of(List<T> points) {
        List<T> sorted = points.stream()
                .sorted(Comparator.comparingDouble(x).thenComparingDouble(y))
                .toList();
        if (sorted.size() < 3) {
            return sorted;
        }
        List<T> hull = chain(sorted);
        List<T> back = chain(sorted.reversed());
        hull.removeLast();
        back.removeLast();
        hull.addAll(back);
        return hull;
    }

    private List<T> chain(List<T> sorted) {
        List<T> chain = new ArrayList<>();
        for (T point : sorted) {
            while (chain.size() >= 2 && turn(chain.get(chain.size() - 2), chain.getLast(), point) <= flat) {
                chain.removeLast();
            }
            chain.add(point);
        }
        return chain;
    }

    /** Twice the area of a triangle, positive when it turns from x towards y. */
    double turn(T a, T b, T c) {
        return (at(x, b) - at(x, a)) * (at(y, c) - at(y, a)) - (at(y, b) - at(y, a)) * (at(x, c) - at(x, a));
    }

    private static <T> double at(ToDoubleFunction<T> axis, T point) {
        return axis.applyAsDouble(point);
    }
}
