package newel.catalogue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import newel.body.Demands;
import newel.body.JointRange;
import newel.body.Motion;

/** No joint goes further than an older adult's picture may show. */
final class InRange implements BodyRule {
    /** Solved angles come to this near, degrees. */
    private static final double ROUNDING = 1;

    @Override
    public Stream<Flaw> flaws(Movement movement, Map<String, Doing> doings) {
        return doings.values().stream().flatMap(InRange::flaws);
    }

    private static Stream<Flaw> flaws(Doing doing) {
        Demands demands = doing.demands();
        return Arrays.stream(Motion.values())
                .filter(motion -> Rises.most(motion, demands) > JointRange.most(motion) + ROUNDING)
                .map(motion -> Rule.flaw(
                        doing.variant(),
                        String.format(
                                Locale.ROOT,
                                "it %s the %s to %.0f°; %d° is the most",
                                motion.verb(),
                                motion.part(),
                                Rises.most(motion, demands),
                                JointRange.most(motion))));
    }
}
