package newel.catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A movement's variants as a flight of steps: level 0 holds those that nothing is easier than, and each other variant
 * stands one level above the highest of those it links down to.
 */
public record Flight(List<List<Variant>> levels) {
    public static Flight of(Movement movement) {
        Map<String, Integer> level = new HashMap<>();
        Map<String, Variant> byId = new HashMap<>();
        movement.variants().forEach(variant -> byId.put(variant.id(), variant));
        List<List<Variant>> levels = new ArrayList<>();
        for (Variant variant : movement.variants()) {
            int at = level(variant, byId, level);
            while (levels.size() <= at) {
                levels.add(new ArrayList<>());
            }
            levels.get(at).add(variant);
        }
        return new Flight(levels.stream().map(List::copyOf).toList());
    }

    private static int level(Variant variant, Map<String, Variant> byId, Map<String, Integer> level) {
        Integer known = level.get(variant.id());
        if (known != null) {
            return known;
        }
        int highest = -1;
        for (Link link : variant.easier()) {
            Variant easier = byId.get(link.easier());
            highest = Math.max(highest, level(easier, byId, level));
        }
        level.put(variant.id(), highest + 1);
        return highest + 1;
    }

    /** From the easiest to the hardest, those of one level in the order of the catalogue. */
    public List<Variant> steps() {
        return levels.stream().flatMap(List::stream).toList();
    }
}
