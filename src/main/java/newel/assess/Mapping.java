package newel.assess;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** One mapping in a data file. What is missing, of the wrong kind or never asked for goes to the list of faults. */
final class Mapping {
    private final String at;
    private final JsonNode node;
    private final List<String> faults;
    private final Set<String> asked = new HashSet<>();

    Mapping(String at, JsonNode node, List<String> faults) {
        this.at = at;
        this.node = node;
        this.faults = faults;
        if (!node.isObject()) {
            fault("is not a mapping");
        }
    }

    void fault(String what) {
        faults.add(at + ": " + what);
    }

    boolean has(String key) {
        return node.has(key);
    }

    String text(String key) {
        if (optional(key).isBlank()) {
            fault("has no " + key);
        }
        return optional(key);
    }

    String optional(String key) {
        return value(key).asText("");
    }

    boolean flag(String key) {
        JsonNode value = value(key);
        if (!value.isMissingNode() && !value.isBoolean()) {
            fault(key + " is neither true nor false");
        }
        return value.asBoolean();
    }

    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        list(key).forEach(each -> texts.add(each.asText()));
        return List.copyOf(texts);
    }

    /** Zero, and a fault, where there is no number. */
    BigDecimal decimal(String key) {
        return number(key, value(key));
    }

    List<BigDecimal> decimals(String key) {
        List<BigDecimal> numbers = new ArrayList<>();
        JsonNode value = value(key);
        if (value.isArray()) {
            value.forEach(each -> numbers.add(number(key, each)));
        } else {
            numbers.add(number(key, value));
        }
        return List.copyOf(numbers);
    }

    private BigDecimal number(String key, JsonNode value) {
        if (!value.isNumber()) {
            fault(key + " is not a number: " + value);
        }
        return value.decimalValue();
    }

    <E extends Enum<E>> E one(String key, Class<E> kind) {
        return constant(key, text(key), kind);
    }

    <E extends Enum<E>> Set<E> some(String key, Class<E> kind) {
        Set<E> set = EnumSet.noneOf(kind);
        texts(key).forEach(text -> set.add(constant(key, text, kind)));
        return set;
    }

    /** The first constant, and a fault, where there is none of that name. */
    private <E extends Enum<E>> E constant(String key, String text, Class<E> kind) {
        String name = text.toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        return Arrays.stream(kind.getEnumConstants())
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseGet(() -> {
                    fault(key + " is not known: " + text);
                    return kind.getEnumConstants()[0];
                });
    }

    Mapping child(String key) {
        return new Mapping(at + ", " + key, value(key), faults);
    }

    List<Mapping> children(String key) {
        List<Mapping> children = new ArrayList<>();
        for (JsonNode each : list(key)) {
            String id = each.path("id").asText(key + " " + (children.size() + 1));
            children.add(new Mapping(at + ", " + id, each, faults));
        }
        return children;
    }

    private JsonNode list(String key) {
        JsonNode value = value(key);
        if (!value.isMissingNode() && !value.isArray()) {
            fault(key + " is not a list");
        }
        return value;
    }

    private JsonNode value(String key) {
        asked.add(key);
        JsonNode value = node.get(key);
        return value == null ? MissingNode.getInstance() : value;
    }

    /** Every key that nobody asked for is a slip of the pen. */
    void finish() {
        node.fieldNames().forEachRemaining(key -> {
            if (!asked.contains(key)) {
                fault(key + " is not a known key");
            }
        });
    }
}
