package newel.compose;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** How many movements each part may choose from, and how long those take that serve best. */
final class Typical {
    /** So many of the best are looked at. */
    private static final int BEST = 8;

    private final Map<BlockKind, List<Option>> best = new EnumMap<>(BlockKind.class);
    private final Map<BlockKind, Long> movements = new EnumMap<>(BlockKind.class);
    private final List<Option> calm;

    Typical(List<Option> options) {
        for (BlockKind part : BlockKind.values()) {
            List<Option> forms = forms(options, option -> option.parts().contains(part) && !option.calm());
            movements.put(part, (long) forms.size());
            best.put(part, forms.stream().limit(BEST).toList());
        }
        calm = forms(options, Option::calm);
    }

    /** The best form of each movement, best movement first. */
    private static List<Option> forms(List<Option> options, Predicate<Option> which) {
        Comparator<Option> worst = Comparator.comparingDouble(option -> option.serves() - option.loss());
        Map<String, Option> forms = new HashMap<>();
        options.stream()
                .filter(which)
                .forEach(option ->
                        forms.merge(option.movement().id(), option, (a, b) -> worst.compare(a, b) >= 0 ? a : b));
        return forms.values().stream()
                .sorted(worst.reversed().thenComparing(Option::id))
                .toList();
    }

    long movements(BlockKind part) {
        return movements.get(part);
    }

    int seconds(BlockKind part, int passes, int rest) {
        return (int) best.get(part).stream()
                .mapToInt(option -> Timing.all(part, option.work(), passes) + passes * rest)
                .average()
                .orElse(0);
    }

    long calm() {
        return calm.size();
    }

    int calmSeconds() {
        return (int) calm.stream()
                .mapToInt(option -> Timing.all(BlockKind.COOL_DOWN, option.work(), 1))
                .average()
                .orElse(0);
    }
}
