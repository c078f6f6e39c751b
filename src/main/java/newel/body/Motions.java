package newel.body;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Reads each motion's angle, in degrees and never negative, from a solved pose. */
final class Motions {
    /** Raised less than 45 degrees from straight out to the side counts as abduction (design choice). */
    private static final double SIDEWAYS = 45;
    /** Plane in which a swung-up arm is in its easy position: the plane of the shoulder blade, 35 to 45 degrees. */
    private static final double EASY_PLANE = 40;
    /** A foot that carries more than this loads its knee. */
    private static final double LOADED = 0.1;

    static Map<Motion, Peak> of(Posed posed, Carried carried) {
        Map<Motion, Peak> angles = new EnumMap<>(Motion.class);
        Pose pose = posed.pose();
        arms(angles, posed);
        legs(angles, pose);
        loadedKnees(angles, posed, carried);
        spine(angles, pose);
        return angles;
    }

    private static void arms(Map<Motion, Peak> angles, Posed posed) {
        Pose pose = posed.pose();
        both(angles, Motion.SHOULDER_RAISE, side -> pose.arm(side).raise());
        both(angles, Motion.SHOULDER_ABDUCTION, side -> abduction(pose.arm(side)));
        both(angles, Motion.SHOULDER_EXTENSION, side -> extension(pose.arm(side)));
        both(angles, Motion.SHOULDER_OUT, side -> ownTurn(pose.arm(side)));
        both(angles, Motion.SHOULDER_IN, side -> -ownTurn(pose.arm(side)));
        both(angles, Motion.ELBOW_BEND, side -> pose.arm(side).elbow());
        both(angles, Motion.WRIST_BACK, side -> pose.arm(side).wrist());
    }

    private static double abduction(Arm arm) {
        return Math.abs(Angles.wrap(arm.plane())) < SIDEWAYS ? arm.raise() : 0;
    }

    /** Angle of a lowered upper arm behind the trunk, seen from the side. */
    private static double extension(Arm arm) {
        double raise = Math.toRadians(arm.raise());
        double ahead = Math.sin(raise) * Math.sin(Math.toRadians(arm.plane()));
        double down = Math.cos(raise);
        return ahead < 0 && down > 0 ? Math.toDegrees(Math.atan2(-ahead, down)) : 0;
    }

    /**
     * The joint's own rotation, outward positive: the turn counted from an arm swung up in the easy plane. Two swings to
     * the same direction differ by the solid angle between their planes (geometry).
     */
    private static double ownTurn(Arm arm) {
        double between = Angles.wrap(EASY_PLANE - arm.plane()) * (1 - Math.cos(Math.toRadians(arm.raise())));
        return Angles.wrap(arm.turn() - between);
    }

    private static void legs(Map<Motion, Peak> angles, Pose pose) {
        both(angles, Motion.HIP_FLEXION, side -> pose.leg(side).flex());
        both(angles, Motion.HIP_EXTENSION, side -> -pose.leg(side).flex());
        both(angles, Motion.HIP_ABDUCTION, side -> pose.leg(side).abd());
        both(angles, Motion.HIP_ADDUCTION, side -> -pose.leg(side).abd());
        both(angles, Motion.HIP_OUT, side -> pose.leg(side).out());
        both(angles, Motion.HIP_IN, side -> -pose.leg(side).out());
        both(angles, Motion.KNEE_BEND, side -> pose.leg(side).knee());
        both(angles, Motion.ANKLE_UP, side -> pose.leg(side).ankle());
        both(angles, Motion.ANKLE_DOWN, side -> -pose.leg(side).ankle());
    }

    private static void loadedKnees(Map<Motion, Peak> angles, Posed posed, Carried carried) {
        if (posed.contacts().ground() != Ground.FEET) {
            angles.put(Motion.KNEE_BEND_LOADED, Peak.ZERO);
            return;
        }
        both(
                angles,
                Motion.KNEE_BEND_LOADED,
                side -> carried.foot(side).push().y() > LOADED
                        ? posed.pose().leg(side).knee()
                        : 0);
    }

    private static void spine(Map<Motion, Peak> angles, Pose pose) {
        part(
                angles,
                pose.lumbar(),
                Motion.LOW_BACK_FLEXION,
                Motion.LOW_BACK_EXTENSION,
                Motion.LOW_BACK_SIDE,
                Motion.LOW_BACK_TURN);
        part(
                angles,
                pose.thorax(),
                Motion.UPPER_BACK_FLEXION,
                Motion.UPPER_BACK_EXTENSION,
                Motion.UPPER_BACK_SIDE,
                Motion.UPPER_BACK_TURN);
        Spine neck = new Spine(
                pose.neck().flex() + pose.nod(), pose.neck().side(), pose.neck().turn());
        part(angles, neck, Motion.NECK_FLEXION, Motion.NECK_EXTENSION, Motion.NECK_SIDE, Motion.NECK_TURN);
    }

    private static void part(
            Map<Motion, Peak> angles, Spine s, Motion flexion, Motion extension, Motion side, Motion turn) {
        angles.put(flexion, positive(s.flex(), s.flex()));
        angles.put(extension, positive(-s.flex(), -s.flex()));
        angles.put(side, positive(-s.side(), s.side()));
        angles.put(turn, positive(-s.turn(), s.turn()));
    }

    private static void both(Map<Motion, Peak> angles, Motion motion, ToDoubleFunction<Side> angle) {
        angles.put(motion, positive(angle.applyAsDouble(Side.LEFT), angle.applyAsDouble(Side.RIGHT)));
    }

    private static Peak positive(double left, double right) {
        return new Peak(Math.max(0, left), Math.max(0, right));
    }

    private Motions() {}
}
