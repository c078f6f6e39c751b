package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.body.Posed;
import newel.body.TrunkAt;
import newel.body.Vec;

/**
 * A turn of the head or the trunk about the body's own long axis, shown by an arc round the crown.
 *
 * @param about the axis, upward along the trunk
 * @param degrees to the person's right positive
 */
record Turning(Posed start, Vec about, double degrees) {
    /** Smaller turns are no turn, degrees. */
    private static final double LEAST = 9;
    /** An arc is drawn over at least this angle, so that it reads as one. */
    private static final double DRAWN = 75;

    private static final double RADIUS = 0.125;
    private static final double OVER_CROWN = 0.02;
    private static final int STEPS = 16;

    static Optional<Turning> between(Posed a, Posed b) {
        Vec axis = a.trunk().thoraxTurn().y();
        double head = angle(a.trunk().headTurn().x(), b.trunk().headTurn().x(), axis);
        double chest = angle(a.trunk().thoraxTurn().x(), b.trunk().thoraxTurn().x(), axis);
        double most = Math.abs(head) > Math.abs(chest) ? head : chest;
        return Math.abs(most) < LEAST || bends(a.trunk(), b.trunk())
                ? Optional.empty()
                : Optional.of(new Turning(a, axis, most));
    }

    /** A trunk that mainly bends or leans moves its crown further than a turn does. */
    private static boolean bends(TrunkAt a, TrunkAt b) {
        return a.crown().minus(a.pelvis()).distance(b.crown().minus(b.pelvis())) > 0.07;
    }

    /** From one direction to another about an axis; clockwise seen against it, that is to the right, positive. */
    private static double angle(Vec from, Vec to, Vec axis) {
        Vec a = from.minus(axis.times(from.dot(axis))).unit();
        Vec b = to.minus(axis.times(to.dot(axis))).unit();
        return -Math.toDegrees(Math.atan2(a.cross(b).dot(axis), a.dot(b)));
    }

    /** The arc from straight ahead in the way of the turn. */
    List<Spot> arc(Camera camera, boolean theOtherWay) {
        double sweep = Math.copySign(Math.max(DRAWN, Math.abs(degrees)), theOtherWay ? -degrees : degrees);
        TrunkAt trunk = start.trunk();
        Vec ahead = trunk.headTurn().x();
        Vec front = ahead.minus(about.times(ahead.dot(about))).unit();
        Vec right = front.cross(about);
        Vec centre = trunk.head().plus(about.times(.066 + OVER_CROWN));
        List<Spot> arc = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double angle = Math.toRadians(sweep * i / STEPS);
            arc.add(camera.see(
                    centre.plus(front.times(RADIUS * Math.cos(angle))).plus(right.times(RADIUS * Math.sin(angle)))));
        }
        return arc;
    }
}
