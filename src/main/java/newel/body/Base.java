package newel.body;

import java.util.ArrayList;
import java.util.List;

/**
 * The base of support seen from above (X forward, Z right): the hull of what stands on the ground. A seat counts with the
 * part that is sat on; a hand on a support is a force and not part of the base (limit of the model).
 */
public record Base(List<Vec> hull) {
    /** From the sit bones to the middle of the thigh, ahead of the hip centres (design choice). */
    private static final double SAT_BEHIND = 0.06;

    private static final double SAT_AHEAD = 0.12;
    private static final double SAT_HALF_WIDTH = 0.10;
    private static final double BED_REACH = 0.6;
    /** Corners that differ by rounding alone are one: the line through two such points would have no direction. */
    private static final double ROUNDING = 1e-9;

    private static final Hull<Vec> SEEN_FROM_ABOVE = new Hull<>(Vec::x, Vec::z, ROUNDING);
    /** The soft part round a knee that carries (design choice). */
    private static final double KNEE_AHEAD = 0.02;

    private static final double KNEE_HALF_WIDTH = 0.03;

    public static Base of(Posed posed) {
        List<Vec> points = new ArrayList<>();
        Contacts contacts = posed.contacts();
        Vec pelvis = posed.trunk().pelvis();
        switch (contacts.ground()) {
            case FEET -> {}
            case SEAT_BACK, SEAT_EDGE -> rectangle(points, pelvis, SAT_BEHIND, SAT_AHEAD, SAT_HALF_WIDTH);
            case BED -> rectangle(points, pelvis, BED_REACH, BED_REACH, BED_REACH / 2);
            case KNEES -> kneeling(points, posed);
        }
        for (Side side : Side.values()) {
            if (contacts.foot(side).carries()) {
                foot(points, posed, side);
            }
        }
        return around(points);
    }

    static Base around(List<Vec> points) {
        return new Base(SEEN_FROM_ABOVE.of(points));
    }

    /** The shank of a knee that is down lies on the floor behind it. */
    private static void kneeling(List<Vec> points, Posed posed) {
        for (Side side : Side.values()) {
            if (posed.contacts().foot(side).kneels()) {
                rectangle(points, posed.leg(side).knee(), Build.SHANK, KNEE_AHEAD, KNEE_HALF_WIDTH);
            }
        }
    }

    private static void rectangle(List<Vec> points, Vec at, double behind, double ahead, double halfWidth) {
        for (double x : new double[] {-behind, ahead}) {
            for (double z : new double[] {-halfWidth, halfWidth}) {
                points.add(new Vec(at.x() + x, 0, at.z() + z));
            }
        }
    }

    private static void foot(List<Vec> points, Posed posed, Side side) {
        LegAt leg = posed.leg(side);
        Vec aside = leg.foot().z().times(Build.HALF_FOOT);
        Foot.Placement placement = posed.contacts().foot(side).placement();
        Vec back = placement == Foot.Placement.BALL ? leg.ball() : leg.heel();
        Vec front = placement == Foot.Placement.HEEL
                ? leg.heel().plus(leg.foot().x().times(0.02))
                : posed.toe(side);
        for (Vec end : List.of(back, front)) {
            points.add(end.plus(aside));
            points.add(end.minus(aside));
        }
    }

    /** Signed distance of a point from the edge, inside positive; minus infinity when there is no base. */
    public double margin(Vec point) {
        if (hull.size() < 3) {
            return Double.NEGATIVE_INFINITY;
        }
        double inside = Double.POSITIVE_INFINITY;
        double outside = Double.POSITIVE_INFINITY;
        for (int i = 0; i < hull.size(); i++) {
            Vec a = hull.get(i);
            Vec b = hull.get((i + 1) % hull.size());
            inside = Math.min(inside, SEEN_FROM_ABOVE.turn(a, b, point) / flat(a, b));
            outside = Math.min(outside, fromEdge(a, b, point));
        }
        return inside >= 0 ? inside : -outside;
    }

    private static double fromEdge(Vec a, Vec b, Vec point) {
        double length = flat(a, b);
        double along =
                ((point.x() - a.x()) * (b.x() - a.x()) + (point.z() - a.z()) * (b.z() - a.z())) / (length * length);
        return flat(a.towards(b, Math.max(0, Math.min(1, along))), point);
    }

    /** Least distance between two parallel lines that hold the base. */
    public double width() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < hull.size() && hull.size() > 2; i++) {
            Vec a = hull.get(i);
            Vec b = hull.get((i + 1) % hull.size());
            double most = 0;
            for (Vec point : hull) {
                most = Math.max(most, SEEN_FROM_ABOVE.turn(a, b, point) / flat(a, b));
            }
            least = Math.min(least, most);
        }
        return Double.isInfinite(least) ? 0 : least;
    }

    public double area() {
        double twice = 0;
        for (int i = 0; i < hull.size(); i++) {
            Vec a = hull.get(i);
            Vec b = hull.get((i + 1) % hull.size());
            twice += a.x() * b.z() - b.x() * a.z();
        }
        return twice / 2;
    }

    private static double flat(Vec a, Vec b) {
        return Math.hypot(b.x() - a.x(), b.z() - a.z());
    }
}
