package newel.program;

import java.util.ArrayList;
import java.util.List;
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

    /** Added, changed and moved ones in the order of the newer version, then those that are gone. */
    static List<Difference> between(Version older, Version newer) {
        Set<String> moved = Order.moved(older.session(), newer.session());
        List<Difference> differences = new ArrayList<>();
        newer.session().items().forEach(item -> {
            Optional<Item> before = older.session().item(item.movement());
            if (before.isEmpty()) {
                differences.add(new Added(item));
            } else if (!same(before.get(), item)) {
                differences.add(new Changed(before.get(), item));
            } else if (moved.contains(item.movement())) {
                differences.add(new Moved(item));
            }
        });
        older.session().items().forEach(item -> {
            if (newer.session().item(item.movement()).isEmpty()) {
                differences.add(new Removed(item));
            }
        });
        return List.copyOf(differences);
    }

    private static boolean same(Item a, Item b) {
        return a.variant().equals(b.variant())
                && a.share().equals(b.share())
                && a.dose().equals(b.dose());
    }
}
