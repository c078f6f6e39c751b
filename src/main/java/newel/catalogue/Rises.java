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
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private Rises() {}
}
