package newel.body;

import java.util.ArrayList;
import java.util.List;

/** The point masses of a solved pose, part by part, in fractions of body mass. */
final class Bodies {
    /** A point mass, or a force of that many body weights where mass stands for weight. */
    record Point(double mass, Vec at) {}

    private final Posed posed;
    private final Masses masses;

    Bodies(Posed posed, Masses masses) {
        this.posed = posed;
        this.masses = masses;
    }

    /** Upper arm, forearm, hand and what the hand holds. */
    List<Point> arm(Side side) {
        List<Point> points = new ArrayList<>(forearm(side));
        ArmAt at = posed.arm(side);
        points.add(point(masses.upperArm(), at.shoulder(), at.elbow()));
        return points;
    }

    List<Point> forearm(Side side) {
        ArmAt at = posed.arm(side);
        return List.of(
                point(masses.forearm(), at.elbow(), at.wrist()),
                point(masses.hand(), at.wrist(), at.fingertip()),
                new Point(holds(side) ? posed.contacts().heldMass() : 0, at.palm()));
    }

    private boolean holds(Side side) {
        return posed.contacts().hand(side).hold().holds();
    }

    List<Point> foot(Side side) {
        LegAt at = posed.leg(side);
        return List.of(point(masses.foot(), at.ankle(), at.ball()));
    }

    List<Point> shank(Side side) {
        List<Point> points = new ArrayList<>(foot(side));
        LegAt at = posed.leg(side);
        points.add(point(masses.shank(), at.knee(), at.ankle()));
        return points;
    }

    List<Point> leg(Side side) {
        List<Point> points = new ArrayList<>(shank(side));
        LegAt at = posed.leg(side);
        points.add(point(masses.thigh(), at.hip(), at.knee()));
        return points;
    }

    /** Everything above the lumbosacral joint. */
    List<Point> upperBody() {
        TrunkAt trunk = posed.trunk();
        List<Point> points = new ArrayList<>();
        points.add(new Point(masses.head().mass(), trunk.ear()));
        points.add(point(masses.thorax(), trunk.c7(), trunk.waist()));
        points.add(point(masses.abdomen(), trunk.waist(), trunk.lumbosacral()));
        points.addAll(arm(Side.RIGHT));
        points.addAll(arm(Side.LEFT));
        return points;
    }

    List<Point> all() {
        List<Point> points = new ArrayList<>(upperBody());
        points.add(point(
                masses.pelvis(), posed.trunk().lumbosacral(), posed.trunk().pelvis()));
        points.addAll(leg(Side.RIGHT));
        points.addAll(leg(Side.LEFT));
        return points;
    }

    static Vec centre(List<Point> points) {
        Vec sum = Vec.ZERO;
        double mass = 0;
        for (Point point : points) {
            sum = sum.plus(point.at().times(point.mass()));
            mass += point.mass();
        }
        return sum.times(1 / mass);
    }

    private static Point point(Masses.Segment segment, Vec from, Vec to) {
        return new Point(segment.mass(), from.towards(to, segment.centre()));
    }
}
