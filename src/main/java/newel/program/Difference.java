package newel.program;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import newel.compose.Item;

/** What changed from one version to the next, item by item. */
public sealed interface Difference {
    record Added(Item item) implements Difference {}

    record Removed(Item item) implements Difference {}

    /** Another variant, share or dose of the same movement. */
    record Changed(Item before, Item after) implements Difference {}

    /** The same as before, at another place. */
    record Moved(Item item) implements Difference {}

    /**
     * Added, changed and moved ones in the order of the newer version, then those that are gone. Items are told apart by
     * movement; where the days differ, an item is compared as on the first day that has it. Another order counts on the
     * days that both versions have.
     */
    static List<Difference> between(Version older, Version newer) {
        Set<String> moved = moved(older, newer);
        List<Difference> differences = new ArrayList<>();
        for (Item item : once(newer)) {
            Optional<Item> before = older.item(item.movement());
            if (before.isEmpty()) {
                differences.add(new Added(item));
            } else if (!same(before.get(), item)) {
                differences.add(new Changed(before.get(), item));
            } else if (moved.contains(item.movement())) {
                differences.add(new Moved(item));
            }
        }
        once(older).stream()
                .filter(item -> newer.item(item.movement()).isEmpty())
                .forEach(item -> differences.add(new Removed(item)));
        return List.copyOf(differences);
    }

    private static Set<String> moved(Version older, Version newer) {
        Set<String> moved = new HashSet<>();
        newer.days().stream()
                .filter(older.days()::contains)
                .forEach(day -> moved.addAll(Order.moved(older.session(day), newer.session(day))));
        return moved;
    }

    /** The first item of each movement. */
    private static List<Item> once(Version version) {
        Map<String, Item> items = new LinkedHashMap<>();
        version.items().forEach(item -> items.putIfAbsent(item.movement(), item));
        return List.copyOf(items.values());
    }

    private static boolean same(Item a, Item b) {
        return a.variant().equals(b.variant())
                && a.share().equals(b.share())
                && a.dose().equals(b.dose());
    }
}
