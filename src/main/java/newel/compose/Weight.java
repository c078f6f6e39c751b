package newel.compose;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.Map;

/** A weight of the score; its size and the reason for it stand in {@code weights.yaml}. */
public enum Weight {
    GOALS("goals"),
    CHALLENGE("challenge"),
    MAJOR("major"),
    RETURNS("returns"),
    SAME_PLACE("samePlace"),
    LONG_ENOUGH("longEnough"),
    MORE("more"),
    EARLY("early"),
    LOOSENS("loosens"),
    WARMS("warms"),
    STRETCHES("stretches"),
    CHANGE_POSITION("changePosition"),
    CHANGE_PLACE("changePlace"),
    TAKE_UP("takeUp"),
    SAME_MUSCLES("sameMuscles");

    private record Entry(int points, String why) {}

    private static final Map<Weight, Entry> ENTRIES = read();

    private final String key;

    Weight(String key) {
        this.key = key;
    }

    private static Map<Weight, Entry> read() {
        JsonNode file = Costs.read("weights.yaml");
        Map<Weight, Entry> entries = new EnumMap<>(Weight.class);
        for (Weight weight : values()) {
            JsonNode entry = file.path(weight.key);
            if (!entry.path("points").isInt() || entry.path("why").asText().isBlank()) {
                throw new IllegalStateException("weights.yaml: " + weight.key + " has no points or no reason");
            }
            entries.put(
                    weight,
                    new Entry(entry.path("points").asInt(), entry.path("why").asText()));
        }
        return entries;
    }

    int points() {
        return ENTRIES.get(this).points();
    }

    public String why() {
        return ENTRIES.get(this).why();
    }
}
