package newel.compose;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The order within a part. A warm-up rises from lying to standing and from easy to livelier; a cool-down sinks the same way
 * back; balance begins with what is hardest. Rounds are in whatever order is best and have no ranks.
 */
final class Ranks {
    static final int NONE = 0;

    private static final Comparator<Option> RISING = Comparator.comparing(
                    (Option option) -> option.stance().posture())
            .thenComparingInt(option -> option.variant().effort())
            .thenComparing(Option::id);

    private static final Comparator<Option> SINKING = Comparator.comparing(
                    (Option option) -> option.stance().posture(), Comparator.reverseOrder())
            .thenComparing(option -> option.variant().effort(), Comparator.reverseOrder())
            .thenComparing(Option::id);

    private static final Comparator<Option> HARDEST_FIRST = Comparator.comparing(Option::hardBalance)
            .reversed()
            .thenComparing(option -> option.variant().effort(), Comparator.reverseOrder())
            .thenComparing(Option::id);

    private final Map<String, Integer> ranks = new HashMap<>();

    Ranks(List<Option> options) {
        rank(options, BlockKind.WARM_UP, RISING);
        rank(options, BlockKind.COOL_DOWN, SINKING);
        rank(options, BlockKind.BALANCE, HARDEST_FIRST);
    }

    private void rank(List<Option> options, BlockKind part, Comparator<Option> order) {
        options.stream()
                .filter(option -> option.parts().contains(part))
                .sorted(order)
                .forEach(option -> ranks.put(key(option, part), ranks.size() + 1));
    }

    int of(Option option, BlockKind part) {
        return ranks.getOrDefault(key(option, part), NONE);
    }

    private static String key(Option option, BlockKind part) {
        return part + " " + option.id();
    }
}
