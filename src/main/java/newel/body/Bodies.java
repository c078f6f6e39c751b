package newel.body;

import java.util.ArrayList;
import java.util.List;

/** The point masses of a solved pose, part by part, in fractions of body mass. */
final class Bodies {
    /** A point mass, or a force of that many body weights where mass stands for weight. */
    record Point(double mass, Vec at) {}

    /** One side's point masses, each list holding all beyond its joint. */
    private record Limbs(List<Point> forearm, List<Point> arm, List<Point> foot, List<Point> shank, List<Point> leg) {}

    private final Posed posed;
    private final Masses masses;
    private final Limbs right;
    private final Limbs left;
    private final List<Point> upperBody;
    private final List<Point> all;

    Bodies(Posed posed, Masses masses) {
        this.posed = posed;
        this.masses = masses;
        this.right = limbs(Side.RIGHT);
        this.left = limbs(Side.LEFT);
        this.upperBody = joined(trunk(), right.arm, left.arm);
        this.all = joined(upperBody, pelvis(), right.leg, left.leg);
    }

    private Limbs limbs(Side side) {
        ArmAt arm = posed.arm(side);
        LegAt leg = posed.leg(side);
        List<Point> forearm = List.of(
                point(masses.forearm(), arm.elbow(), arm.wrist()),
                point(masses.hand(), arm.wrist(), arm.fingertip()),
                new Point(holds(side) ? posed.contacts().heldMass() : 0, arm.palm()));
        List<Point> foot = List.of(point(masses.foot(), leg.ankle(), leg.ball()));
        List<Point> shank = joined(foot, List.of(point(masses.shank(), leg.knee(), leg.ankle())));
        return new Limbs(
                forearm,
                joined(forearm, List.of(point(masses.upperArm(), arm.shoulder(), arm.elbow()))),
                foot,
                shank,
                joined(shank, List.of(point(masses.thigh(), leg.hip(), leg.knee()))));
    }

    private List<Point> trunk() {
        TrunkAt trunk = posed.trunk();
        return List.of(
                new Point(masses.head().mass(), trunk.ear()),
                point(masses.thorax(), trunk.c7(), trunk.waist()),
                point(masses.abdomen(), trunk.waist(), trunk.lumbosacral()));
    }

    private List<Point> pelvis() {
        return List.of(point(
                masses.pelvis(), posed.trunk().lumbosacral(), posed.trunk().pelvis()));
    }

    private boolean holds(Side side) {
        return posed.contacts().hand(side).hold().holds();
    }

    @SafeVarargs
    private static List<Point> joined(List<Point>... lists) {
        List<Point> points = new ArrayList<>();
        for (List<Point> list : lists) {
            points.addAll(list);
        }
        return points;
    }

    private Limbs of(Side side) {
        return side == Side.RIGHT ? right : left;
    }

    /** Upper arm, forearm, hand and what the hand holds. */
    List<Point> arm(Side side) {
        return of(side).arm;
    }

    List<Point> forearm(Side side) {
        return of(side).forearm;
    }

    List<Point> foot(Side side) {
        return of(side).foot;
    }

    List<Point> shank(Side side) {
        return of(side).shank;
    }

    List<Point> leg(Side side) {
        return of(side).leg;
    }

    /** Everything above the lumbosacral joint. */
    List<Point> upperBody() {
        return upperBody;
    }

    List<Point> all() {
        return all;
    }

    /** Of the whole body, statures. */
    Vec centre() {
        return centre(all);
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
