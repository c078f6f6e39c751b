package newel.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import newel.body.Demands;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Side;

/**
 * What an easier variant asks more of. Small rises, and angles and loads that no limit reaches, are left out; a load must
 * also grow by a tenth.
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

    static List<Rise> between(Doing harder, Doing easier) {
        return between(harder.variant(), harder.demands(), easier.variant(), easier.demands());
    }

    static List<Rise> between(Variant from, Demands before, Variant to, Demands after) {
        List<Rise> rises = new ArrayList<>();
        angles(rises, from, before, to, after);
        loads(rises, before, after);
        others(rises, from, to);
        hands(rises, before.handShare(), after.handShare());
        return rises;
    }

    static Set<String> names(List<Rise> rises) {
        return rises.stream().map(Rise::demand).collect(Collectors.toCollection(TreeSet::new));
    }

    private static void angles(List<Rise> rises, Variant from, Demands before, Variant to, Demands after) {
        for (Motion motion : Motion.values()) {
            if (grows(motion, before, after) && !saidOnce(motion, from, to)) {
                rises.add(new Rise(
                        name(motion), Measure.degrees(most(motion, before)), Measure.degrees(most(motion, after))));
            }
        }
    }

    private static void loads(List<Rise> rises, Demands from, Demands to) {
        for (Joint joint : Joint.values()) {
            if (grows(joint, from, to)) {
                rises.add(new Rise(name(joint), Measure.load(most(joint, from)), Measure.load(most(joint, to))));
            }
        }
    }

    private static void others(List<Rise> rises, Variant from, Variant to) {
        add(rises, "hold", to.holdSeconds() > from.holdSeconds(), from.holdSeconds() + " s", to.holdSeconds() + " s");
        add(
                rises,
                "coordination",
                to.coordination() > from.coordination(),
                "" + from.coordination(),
                "" + to.coordination());
        grade(rises, "grip", from.grip(), to.grip(), true);
        grade(rises, "position", from.position(), to.position(), true);
        grade(rises, "support", from.support(), to.support(), !sits(to));
        double held = heldMass(from);
        double more = heldMass(to);
        share(rises, "held", held, more, HELD);
    }

    private static void share(List<Rise> rises, String name, double before, double after, double step) {
        if (after > before + step) {
            rises.add(new Rise(name, Measure.hundredths(before), Measure.hundredths(after)));
        }
    }

    private static void hands(List<Rise> rises, double before, double after) {
        share(rises, "hands", before, after, HAND_SHARE);
    }

    private static <E extends Enum<E>> void grade(List<Rise> rises, String name, E before, E after, boolean counts) {
        add(rises, name, counts && after.compareTo(before) > 0, Measure.word(before), Measure.word(after));
    }

    private static void add(List<Rise> rises, String name, boolean rise, String before, String after) {
        if (rise) {
            rises.add(new Rise(name, before, after));
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
        return after > before + Threshold.step(motion) && after > Threshold.noLimitBelow(motion);
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
        return after > before + Threshold.step(joint)
                && after > before * LOAD_TENTH
                && after > Threshold.noLimitBelow(joint);
    }

    private static String name(Enum<?> constant) {
        return Measure.word(constant);
    }

    private Rises() {}
}
