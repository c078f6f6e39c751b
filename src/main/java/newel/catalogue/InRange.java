package newel.catalogue;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import newel.body.Demands;
import newel.body.JointRange;
import newel.body.Motion;
import newel.body.Side;
import newel.body.Statics;

/** No joint goes further than an older adult's picture may show. */
final class InRange implements Rule {
    /** Solved angles come to this near, degrees. */
    private static final double ROUNDING = 1;

    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return movement.variants().stream()
                .filter(variant -> !variant.keyPoses().isEmpty())
                .flatMap(InRange::flaws);
    }

    private static Stream<Flaw> flaws(Variant variant) {
        Demands demands = Statics.demands(variant.keyPoses());
        return Arrays.stream(Motion.values())
                .filter(motion -> peak(demands, motion) > JointRange.most(motion) + ROUNDING)
                .map(motion -> Rule.flaw(
                        variant,
                        String.format(
                                Locale.ROOT,
                                "it %s the %s to %.0f°; %d° is the most",
                                motion.verb(),
                                motion.part(),
                                peak(demands, motion),
                                JointRange.most(motion))));
    }

    private static double peak(Demands demands, Motion motion) {
        return Math.max(demands.angle(motion, Side.LEFT), demands.angle(motion, Side.RIGHT));
    }
}
