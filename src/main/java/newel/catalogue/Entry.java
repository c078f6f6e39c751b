package newel.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** One mapping in a file. Notes what is missing or of the wrong kind, and at `finish` every key that nobody asked for. */
final class Entry {
    private final Spot spot;
    private final String path;
    private final JsonNode node;
    private final Set<String> asked = new HashSet<>();

    Entry(Spot spot, String path, JsonNode node) {
        this.spot = spot;
        this.path = path;
        this.node = node;
        if (!node.isObject() && !node.isMissingNode()) {
            spot.flaw(path + " is not a mapping");
        }
    }

    boolean has(String key) {
        return node.has(key);
    }

    String text(String key) {
        if (!has(key)) {
            spot.flaw(at(key) + " is missing");
        }
        return text(key, "");
    }

    String text(String key, String fallback) {
        JsonNode value = value(key);
        if (!value.isMissingNode() && !value.isTextual()) {
            spot.flaw(at(key) + " is not text");
        }
        return value.asText(fallback);
    }

    boolean flag(String key) {
        JsonNode value = value(key);
        if (!value.isMissingNode() && !value.isBoolean()) {
            spot.flaw(at(key) + " is neither true nor false: " + value);
        }
        return value.asBoolean(false);
    }

    /** Whether the value is just this word. */
    boolean says(String key, String word) {
        return value(key).asText().equals(word);
    }

    double number(String key, double fallback) {
        JsonNode value = value(key);
        if (!value.isMissingNode() && !value.isNumber()) {
            spot.flaw(at(key) + " is not a number: " + value);
        }
        return value.asDouble(fallback);
    }

    int whole(String key, int fallback) {
        double number = number(key, fallback);
        if (number != Math.rint(number)) {
            spot.flaw(at(key) + " is not a whole number: " + number);
        }
        return (int) Math.rint(number);
    }

    <E extends Enum<E>> E one(String key, Class<E> type, E fallback) {
        if (!has(key) && fallback == null) {
            spot.flaw(at(key) + " is missing");
        }
        E instead = fallback == null ? type.getEnumConstants()[0] : fallback;
        return has(key) ? spot.constant(at(key), value(key).asText(), type, instead) : instead;
    }

    <E extends Enum<E>> Set<E> some(String key, Class<E> type) {
        Set<E> set = EnumSet.noneOf(type);
        for (String word : texts(key)) {
            E constant = spot.constant(at(key), word, type, null);
            if (constant != null) {
                set.add(constant);
            }
        }
        return set;
    }

    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (JsonNode item : list(key)) {
            if (!item.isTextual()) {
                spot.flaw(at(key) + " holds something that is not text: " + item);
            }
            texts.add(item.asText());
        }
        return texts;
    }

    List<Double> numbers(String key) {
        List<Double> numbers = new ArrayList<>();
        list(key).forEach(item -> numbers.add(item.asDouble(Double.NaN)));
        if (numbers.stream().anyMatch(number -> number.isNaN())) {
            spot.flaw(at(key) + " holds something that is not a number");
        }
        return numbers;
    }

    Set<String> keys() {
        Set<String> keys = new LinkedHashSet<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    Entry child(String key) {
        return new Entry(spot, at(key), value(key));
    }

    List<Entry> children(String key) {
        List<Entry> children = new ArrayList<>();
        for (JsonNode item : list(key)) {
            children.add(new Entry(spot, at(key) + "[" + children.size() + "]", item));
        }
        return children;
    }

    List<JsonNode> list(String key) {
        JsonNode value = value(key);
        if (!value.isMissingNode() && !value.isArray()) {
            spot.flaw(at(key) + " is not a list");
        }
        List<JsonNode> items = new ArrayList<>();
        value.forEach(items::add);
        return items;
    }

    void flaw(String what) {
        spot.flaw(path.isEmpty() ? what : path + ": " + what);
    }

    void finish() {
        for (String key : keys()) {
            if (!asked.contains(key)) {
                spot.flaw(at(key) + " is not a known key");
            }
        }
    }

    private JsonNode value(String key) {
        asked.add(key);
        JsonNode value = node.get(key);
        return value == null ? MissingNode.getInstance() : value;
    }

    private String at(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
