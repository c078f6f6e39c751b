package newel.compose;

import java.util.Comparator;
import java.util.EnumMap;
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

    private final Map<BlockKind, Map<String, Integer>> ranks = new EnumMap<>(BlockKind.class);

    Ranks(List<Option> options) {
        rank(options, BlockKind.WARM_UP, RISING);
        rank(options, BlockKind.COOL_DOWN, SINKING);
        rank(options, BlockKind.BALANCE, HARDEST_FIRST);
    }

    private void rank(List<Option> options, BlockKind part, Comparator<Option> order) {
        Map<String, Integer> ofPart = new HashMap<>();
        options.stream()
                .filter(option -> option.parts().contains(part))
                .sorted(order)
                .forEach(option -> ofPart.put(option.id(), ofPart.size() + 1));
        ranks.put(part, ofPart);
    }

    int of(Option option, BlockKind part) {
        return ranks.getOrDefault(part, Map.of()).getOrDefault(option.id(), NONE);
    }
}
