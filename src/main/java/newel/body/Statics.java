package newel.body;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** What a path asks of a body: peaks over the whole path, sampled between the key poses. */
public final class Statics {
    /** Poses sampled from one key pose to the next; halving the step changes no peak by more than about a degree. */
    public static final int STEPS = 10;

    /** Lower than the heart by this much counts as below it, statures (design choice). */
    private static final double BELOW = 0.02;

    public static Demands demands(List<KeyPose> keyPoses) {
        return demands(keyPoses, Masses.WINTER);
    }

    public static Demands demands(List<KeyPose> keyPoses, Masses masses) {
        return demandsOf(new Path(keyPoses).samples(STEPS), masses);
    }

    /** What a path asks that is solved already, sampled as {@link Path#samples} does. */
    public static Demands demandsOf(List<Posed> samples, Masses masses) {
        Map<Motion, Peak> angles = new EnumMap<>(Motion.class);
        Map<Joint, Peak> loads = new EnumMap<>(Joint.class);
        List<Stand> stands = new ArrayList<>();
        for (Posed posed : samples) {
            Bodies bodies = new Bodies(posed, masses);
            Carried carried = Carried.of(posed, bodies);
            stands.add(Stand.of(posed, bodies));
            Motions.of(posed, carried).forEach((motion, peak) -> angles.merge(motion, peak, Peak::max));
            loads(new Moments(posed, bodies, carried)).forEach((joint, peak) -> loads.merge(joint, peak, Peak::max));
        }
        return new Demands(
                angles,
                loads,
                least(stands, Stand::margin),
                samples.stream().mapToDouble(Statics::fingertips).max().orElseThrow(),
                samples.stream().anyMatch(Statics::headBelowHeart),
                samples.stream().filter(Statics::armsHigh).count() / (double) samples.size(),
                samples.stream().mapToDouble(Statics::handShare).max().orElseThrow(),
                least(stands, Stand::width));
    }

    /** How wide a sample stands, and how far inside that its centre of mass is. */
    private record Stand(double margin, double width) {
        static Stand of(Posed posed, Bodies bodies) {
            Base base = Base.of(posed);
            return new Stand(base.margin(bodies.centre()), base.width());
        }
    }

    private static double least(List<Stand> stands, ToDoubleFunction<Stand> what) {
        return stands.stream().mapToDouble(what).min().orElseThrow();
    }

    /** Centre of mass, statures. */
    public static Vec centreOfMass(Posed posed, Masses masses) {
        return new Bodies(posed, masses).centre();
    }

    /** Signed distance of the centre of mass inside the base of support, statures. */
    public static double margin(Posed posed, Masses masses) {
        return Base.of(posed).margin(centreOfMass(posed, masses));
    }

    /** Net moment at a joint, body weight times stature, as a vector in the world. */
    public static Vec moment(Posed posed, Masses masses, Joint joint, Side side) {
        return new Moments(posed, masses).at(joint, side);
    }

    private static Map<Joint, Peak> loads(Moments moments) {
        Map<Joint, Peak> loads = new EnumMap<>(Joint.class);
        for (Joint joint : Joint.values()) {
            double left = moments.size(joint, Side.LEFT);
            loads.put(joint, new Peak(left, joint.sided() ? moments.size(joint, Side.RIGHT) : left));
        }
        return loads;
    }

    private static double fingertips(Posed posed) {
        return Math.max(
                posed.rightArm().fingertip().y(), posed.leftArm().fingertip().y());
    }

    private static boolean headBelowHeart(Posed posed) {
        return posed.contacts().ground() != Ground.BED
                && posed.trunk().head().y() < posed.trunk().heart().y() - BELOW;
    }

    private static boolean armsHigh(Posed posed) {
        boolean upright = posed.trunk().thoraxTurn().y().y() > 0.7;
        return upright && (high(posed.rightArm()) || high(posed.leftArm()));
    }

    private static boolean high(ArmAt arm) {
        return arm.elbow().y() >= arm.shoulder().y() - 0.01;
    }

    private static double handShare(Posed posed) {
        return Math.max(Leaning.share(posed, Side.RIGHT), Leaning.share(posed, Side.LEFT));
    }

    private Statics() {}
}
