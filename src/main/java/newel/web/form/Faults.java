package newel.web.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is wrong with a form: one sentence a field, in the order of the fields. */
public final class Faults {
    /** @param missing nothing was given, as against something that cannot be used */
    public record Fault(String field, String message, boolean missing) {}

    private final Map<String, Fault> byField = new LinkedHashMap<>();

    public void missing(String field, String message) {
        byField.putIfAbsent(field, new Fault(field, message, true));
    }

    public void wrong(String field, String message) {
        byField.putIfAbsent(field, new Fault(field, message, false));
    }

    public boolean none() {
        return byField.isEmpty();
    }

    public List<Fault> all() {
        return List.copyOf(byField.values());
    }

    /** The message for a field, empty when it is in order. */
    public String at(String field) {
        return byField.containsKey(field) ? byField.get(field).message() : "";
    }

    /** Only what was given and cannot be used: what a person has not come to yet is not held against them. */
    public Faults wrongOnly() {
        Faults kept = new Faults();
        all().stream().filter(fault -> !fault.missing()).forEach(fault -> kept.byField.put(fault.field(), fault));
        return kept;
    }
}
