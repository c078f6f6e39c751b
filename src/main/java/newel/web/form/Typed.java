package newel.web.form;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import newel.web.FormToken;

/** What was typed and chosen, as it came, right or wrong. */
public record Typed(Map<String, List<String>> values) {
    public static final Typed NOTHING = new Typed(Map.of());

    public Typed {
        values = Map.copyOf(values);
    }

    public static Typed of(Context ctx) {
        Map<String, List<String>> values = new LinkedHashMap<>(ctx.formParamMap());
        values.remove(FormToken.FIELD);
        return new Typed(values);
    }

    /** The first value without spaces around it; empty when there is none. */
    public String one(String name) {
        List<String> found = values.getOrDefault(name, List.of());
        return found.isEmpty() ? "" : found.getFirst().strip();
    }

    public List<String> all(String name) {
        return values.getOrDefault(name, List.of());
    }

    public boolean has(String name, String value) {
        return all(name).contains(value);
    }

    /** These values with others laid over them. */
    public Typed with(Typed newer) {
        Map<String, List<String>> both = new LinkedHashMap<>(values);
        both.putAll(newer.values);
        return new Typed(both);
    }

    public Typed with(String name, String value) {
        return with(new Typed(Map.of(name, List.of(value))));
    }

    public Typed with(String name, List<String> all) {
        return with(new Typed(Map.of(name, all)));
    }

    /** Only the values whose names begin so. */
    public Typed under(String prefix) {
        Map<String, List<String>> kept = new LinkedHashMap<>();
        values.forEach((name, all) -> {
            if (name.startsWith(prefix)) {
                kept.put(name, all);
            }
        });
        return new Typed(kept);
    }

    /** All values but those whose names begin so. */
    public Typed without(String prefix) {
        Map<String, List<String>> kept = new LinkedHashMap<>(values);
        kept.keySet().removeIf(name -> name.startsWith(prefix));
        return new Typed(kept);
    }
}
