package newel.catalogue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import newel.body.Demands;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Side;

/**
 * What an easier variant asks more of. Small rises, and angles that no limit reaches, are left out; a load must also grow
 * by a tenth. The figures are those that the drafts of the catalogue were written with (design choice).
 */
final class Rises {
    private static final Set<String> OTHERS =
            Set.of("hold", "coordination", "grip", "position", "support", "hands", "held");

    static final Set<String> NAMES = Stream.of(
                    Arrays.stream(Motion.values()).map(Rises::name),
                    Arrays.stream(Joint.values()).map(Rises::name),
                    OTHERS.stream())
            .flatMap(names -> names)
            .collect(Collectors.toUnmodifiableSet());

    /** A hand carries this much more, body weights. */
    private static final double HAND_SHARE = 0.01;
    /** A hand holds this much more, body masses. */
    private static final double HELD = 0.001;

    private static final double LOAD_TENTH = 1.1;

    static Set<String> between(Doing harder, Doing easier) {
        Set<String> rises = new TreeSet<>();
        for (Motion motion : Motion.values()) {
            if (grows(motion, harder.demands(), easier.demands())
                    && !saidOnce(motion, harder.variant(), easier.variant())) {
                rises.add(name(motion));
            }
        }
        for (Joint joint : Joint.values()) {
            if (grows(joint, harder.demands(), easier.demands())) {
                rises.add(name(joint));
            }
        }
        others(rises, harder, easier);
        return rises;
    }

    private static void others(Set<String> rises, Doing harder, Doing easier) {
        Variant from = harder.variant();
        Variant to = easier.variant();
        add(rises, "hold", to.holdSeconds() > from.holdSeconds());
        add(rises, "coordination", to.coordination() > from.coordination());
        add(rises, "grip", to.grip().compareTo(from.grip()) > 0);
        add(rises, "position", to.position().compareTo(from.position()) > 0);
        add(rises, "support", to.support().compareTo(from.support()) > 0 && !sits(to));
        add(rises, "hands", easier.demands().handShare() > harder.demands().handShare() + HAND_SHARE);
        add(rises, "held", heldMass(to) > heldMass(from) + HELD);
    }

    private static void add(Set<String> rises, String name, boolean rise) {
        if (rise) {
            rises.add(name);
        }
    }

    /** Whoever sits or lies down bends hip and knee, and needs no other support: said once, here, for all links. */
    private static boolean saidOnce(Motion motion, Variant from, Variant to) {
        boolean down = to.position().compareTo(from.position()) < 0;
        return down && (motion == Motion.HIP_FLEXION || motion == Motion.KNEE_BEND);
    }

    private static boolean sits(Variant variant) {
        return variant.position().compareTo(Position.STANDING) < 0;
    }

    static double heldMass(Variant variant) {
        return variant.keyPoses().stream()
                .mapToDouble(key -> key.contacts().heldMass())
                .max()
                .orElse(0);
    }

    private static boolean grows(Motion motion, Demands from, Demands to) {
        double before = most(motion, from);
        double after = most(motion, to);
        return after > before + step(motion) && after > noLimitBelow(motion);
    }

    static double most(Motion motion, Demands demands) {
        return Math.max(demands.angle(motion, Side.LEFT), demands.angle(motion, Side.RIGHT));
    }

    static double most(Joint joint, Demands demands) {
        return Math.max(demands.load(joint, Side.LEFT), demands.load(joint, Side.RIGHT));
    }

    static boolean grows(Joint joint, Demands from, Demands to) {
        double before = most(joint, from);
        double after = most(joint, to);
        return after > before + step(joint) && after > before * LOAD_TENTH && after > noLimitBelow(joint);
    }

    /** Degrees by which an angle must grow to count. */
    static double step(Motion motion) {
        return switch (motion) {
            case SHOULDER_RAISE, SHOULDER_ABDUCTION, SHOULDER_EXTENSION -> 4;
            case ELBOW_BEND, SHOULDER_OUT, SHOULDER_IN, WRIST_BACK -> 6;
            case LOW_BACK_FLEXION, LOW_BACK_EXTENSION, LOW_BACK_SIDE, LOW_BACK_TURN -> 3;
            case UPPER_BACK_FLEXION, UPPER_BACK_EXTENSION, UPPER_BACK_SIDE, UPPER_BACK_TURN -> 3;
            case NECK_FLEXION, NECK_EXTENSION, NECK_SIDE, NECK_TURN -> 7;
            case HIP_FLEXION, HIP_EXTENSION, HIP_ABDUCTION, HIP_ADDUCTION, HIP_OUT, HIP_IN -> 5;
            case KNEE_BEND, KNEE_BEND_LOADED, ANKLE_UP, ANKLE_DOWN -> 5;
        };
    }

    /** Degrees that everybody has who can do any of this; a rise that stays under them is no rise. */
    static double noLimitBelow(Motion motion) {
        return switch (motion) {
            case SHOULDER_RAISE, SHOULDER_ABDUCTION -> 25;
            case ELBOW_BEND -> 75;
            case HIP_FLEXION, KNEE_BEND, KNEE_BEND_LOADED -> 30;
            case SHOULDER_OUT, SHOULDER_IN, WRIST_BACK -> 30;
            case ANKLE_DOWN -> 15;
            case SHOULDER_EXTENSION, HIP_EXTENSION, HIP_ABDUCTION, HIP_ADDUCTION, HIP_OUT, HIP_IN, ANKLE_UP -> 5;
            case LOW_BACK_FLEXION, LOW_BACK_EXTENSION, LOW_BACK_SIDE, LOW_BACK_TURN -> 3;
            case UPPER_BACK_FLEXION, UPPER_BACK_EXTENSION, UPPER_BACK_SIDE, UPPER_BACK_TURN -> 3;
            case NECK_FLEXION, NECK_EXTENSION, NECK_SIDE, NECK_TURN -> 20;
        };
    }

    /** Body weight times stature by which a load must grow to count. */
    static double step(Joint joint) {
        return switch (joint) {
            case SHOULDER -> 0.001;
            case ELBOW -> 0.0006;
            case LOW_BACK, HIP, KNEE, ANKLE -> 0.003;
        };
    }

    /**
     * Body weight times stature that sitting or standing quietly asks anyway: half of a straight arm held level (.0086), a
     * level forearm (.0022), a trunk ten degrees off upright, a level shank (.0091), and a centre of mass .03 ahead of two
     * ankles, doubled for the swaying of a quiet stance (statics from Winter's masses).
     */
    private static double noLimitBelow(Joint joint) {
        return switch (joint) {
            case SHOULDER -> 0.0043;
            case ELBOW -> 0.0022;
            case LOW_BACK -> 0.015;
            case HIP -> 0.02;
            case KNEE -> 0.0091;
            case ANKLE -> 0.03;
        };
    }

    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private Rises() {}
}
