package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Vec;

/** How a rope or towel of a length hangs between two points: y = a·cosh(x/a), the curve of its own weight. */
final class Catenary {
    private static final int STEPS = 24;
    /** Less slack than this share of the span is taut. */
    private static final double TAUT = 1.01;
    /** Points nearer to one another than this, seen from above, hang as if this far apart, statures. */
    private static final double LEAST_SPAN = 0.004;

    static List<Vec> between(Vec from, Vec to, double length) {
        double span = Math.max(LEAST_SPAN, Math.hypot(to.x() - from.x(), to.z() - from.z()));
        double rise = to.y() - from.y();
        if (length <= TAUT * Math.hypot(span, rise)) {
            return List.of(from, to);
        }
        double a = flatness(span, Math.sqrt(length * length - rise * rise));
        double middle = a * asinh(rise / (2 * a * Math.sinh(span / (2 * a))));
        double left = middle - span / 2;
        List<Vec> curve = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double x = left + span * i / STEPS;
            double y = a * (Math.cosh(x / a) - Math.cosh(left / a));
            Vec level = from.towards(to, (double) i / STEPS);
            curve.add(new Vec(level.x(), from.y() + y, level.z()));
        }
        return curve;
    }

    /** The a that solves 2a·sinh(span / 2a) = slack length, which falls as a grows: found by halving. */
    private static double flatness(double span, double slack) {
        double low = span / 200;
        double high = span * 200;
        for (int i = 0; i < 80; i++) {
            double a = Math.sqrt(low * high);
            if (2 * a * Math.sinh(span / (2 * a)) > slack) {
                low = a;
            } else {
                high = a;
            }
        }
        return Math.sqrt(low * high);
    }

    private static double asinh(double x) {
        return Math.log(x + Math.sqrt(x * x + 1));
    }

    private Catenary() {}
}
