package newel.body;

import java.util.List;

/**
 * Static net moments, in body weight times stature. The moment at a joint balances the weights and the outside forces of
 * one free part beyond it: M = −Σ(r − r_joint) × F, as a vector in the world.
 */
final class Moments {
    private final Posed posed;
    private final Bodies bodies;
    private final Carried carried;

    Moments(Posed posed, Bodies bodies, Carried carried) {
        this.posed = posed;
        this.bodies = bodies;
        this.carried = carried;
    }

    Moments(Posed posed, Masses masses) {
        this.posed = posed;
        this.bodies = new Bodies(posed, masses);
        this.carried = Carried.of(posed, bodies);
    }

    /** The moment at a joint from weights alone: a naive form that outside tables can be checked against. */
    static Vec ofWeights(Vec joint, List<Bodies.Point> points) {
        Vec sum = Vec.ZERO;
        for (Bodies.Point point : points) {
            sum = sum.minus(point.at().minus(joint).cross(new Vec(0, -point.mass(), 0)));
        }
        return sum;
    }

    private static Vec ofForce(Vec joint, Carried.Force force) {
        return force.at().minus(joint).cross(force.push()).times(-1);
    }

    Vec at(Joint joint, Side side) {
        return switch (joint) {
            case SHOULDER -> arm(posed.arm(side).shoulder(), bodies.arm(side), side);
            case ELBOW -> arm(posed.arm(side).elbow(), bodies.forearm(side), side);
            case LOW_BACK -> lowBack();
            case HIP -> leg(posed.leg(side).hip(), bodies.leg(side), side);
            case KNEE -> leg(posed.leg(side).knee(), bodies.shank(side), side);
            case ANKLE -> leg(posed.leg(side).ankle(), bodies.foot(side), side);
        };
    }

    private Vec arm(Vec joint, List<Bodies.Point> points, Side side) {
        return ofWeights(joint, points)
                .plus(ofForce(joint, carried.hand(side)))
                .plus(ofForce(joint, Pull.on(posed, side)));
    }

    private Vec leg(Vec joint, List<Bodies.Point> points, Side side) {
        return ofWeights(joint, points).plus(ofForce(joint, carried.foot(side)));
    }

    private Vec lowBack() {
        Vec joint = posed.trunk().lumbosacral();
        return ofWeights(joint, bodies.upperBody())
                .plus(ofForce(joint, carried.hand(Side.RIGHT)))
                .plus(ofForce(joint, carried.hand(Side.LEFT)))
                .plus(pullOnTrunk(joint, Side.RIGHT))
                .plus(pullOnTrunk(joint, Side.LEFT));
    }

    private Vec pullOnTrunk(Vec joint, Side side) {
        return Pull.leavesTheTrunk(posed.contacts().hand(side).hold())
                ? ofForce(joint, Pull.on(posed, side))
                : Vec.ZERO;
    }

    /** Size of the moment that muscles have to balance; what a bed, seat or back rest carries asks nothing of them. */
    double size(Joint joint, Side side) {
        return switch (joint) {
            case ANKLE, KNEE -> at(joint, side).length();
            case SHOULDER, ELBOW -> armLies(side) ? 0 : at(joint, side).length();
            case LOW_BACK -> backRests() ? 0 : at(joint, side).length();
            case HIP -> thighRests(side) ? 0 : at(joint, side).length();
        };
    }

    private boolean backRests() {
        return switch (posed.contacts().ground()) {
            case BED -> true;
            case SEAT_BACK -> at(Joint.LOW_BACK, Side.RIGHT).z() <= 0;
            case FEET, SEAT_EDGE, KNEES -> false;
        };
    }

    /** An arm beside a lying body is carried by the bed. */
    private boolean armLies(Side side) {
        double surface = Furniture.BED + Furniture.LYING + RESTING;
        ArmAt arm = posed.arm(side);
        return posed.contacts().ground() == Ground.BED
                && arm.elbow().y() < surface
                && arm.wrist().y() < surface;
    }

    private boolean thighRests(Side side) {
        LegAt leg = posed.leg(side);
        return switch (posed.contacts().ground()) {
            case SEAT_BACK, SEAT_EDGE ->
                posed.contacts().foot(side).placed()
                        || leg.knee().y() < posed.trunk().pelvis().y() + RESTING;
            case BED ->
                !posed.contacts().foot(side).placed()
                        && leg.knee().y() < posed.trunk().pelvis().y() + RESTING
                        && leg.ankle().y() < posed.trunk().pelvis().y() + RESTING;
            case FEET, KNEES -> false;
        };
    }

    /** A thigh no higher than this above the hip still lies on the seat or bed, statures. */
    private static final double RESTING = 0.02;
}
