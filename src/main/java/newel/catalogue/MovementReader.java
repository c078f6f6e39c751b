package newel.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Reads a movement; what is wrong is noted and reading goes on, so that every flaw is found at once. */
final class MovementReader {
    static Movement read(String file, JsonNode node, List<Flaw> flaws) {
        String id = node.path("id").asText("");
        Entry entry = new Entry(new Spot(file, id, flaws), "", node);
        if (!file.equals(entry.text("id") + ".yaml")) {
            entry.flaw("the file is not named after the id");
        }
        Purposes purposes = purposes(entry, new Purposes(Map.of(), Set.of()));
        List<Variant> variants = new ArrayList<>();
        for (JsonNode item : entry.list("variants")) {
            variants.add(VariantReader.read(new Spot(file, item.path("id").asText(id), flaws), item, id, purposes));
        }
        Movement movement = new Movement(
                id,
                entry.text("name"),
                entry.text("why"),
                entry.one("kind", Kind.class, null),
                purposes,
                entry.text("reference"),
                entry.children("faults").stream().map(MovementReader::fault).toList(),
                entry.texts("claims"),
                entry.text("standingOnly", ""),
                List.copyOf(variants));
        entry.finish();
        return movement;
    }

    /** A variant's own weights stand before the movement's; its own regions replace the movement's. */
    static Purposes purposes(Entry entry, Purposes base) {
        Map<Purpose, Integer> weights = new EnumMap<>(Purpose.class);
        weights.putAll(base.weights());
        Entry own = entry.child("purposes");
        for (Purpose purpose : Purpose.values()) {
            String key = purpose.name().toLowerCase(Locale.ROOT);
            if (own.has(key)) {
                weights.put(purpose, own.whole(key, 0));
            }
        }
        weights.values().removeIf(weight -> weight == 0);
        own.finish();
        Set<Region> mobility = entry.some("mobility", Region.class);
        return new Purposes(Map.copyOf(weights), Set.copyOf(entry.has("mobility") ? mobility : base.mobility()));
    }

    private static Fault fault(Entry entry) {
        Fault fault = new Fault(entry.text("fault"), entry.text("correction"));
        entry.finish();
        return fault;
    }

    private MovementReader() {}
}
