package newel.web.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Fills what is asked with what was typed and what is wrong with it. */
public record Asking(Typed typed, Faults faults) {

    public Ask.Line line(String name, String label) {
        return new Ask.Line(name, label, "", typed.one(name), faults.at(name), "text", "", false);
    }

    public Ask.Words words(String name, String label) {
        return new Ask.Words(name, label, "", typed.one(name), faults.at(name), false);
    }

    public Ask.Day day(String name, String legend) {
        return new Ask.Day(
                name,
                legend,
                "",
                DateBoxes.day(typed, name),
                DateBoxes.month(typed, name),
                DateBoxes.year(typed, name),
                faults.at(name),
                false);
    }

    /** @param labels value to label, in the order they are shown */
    public Ask.Pick one(String name, String legend, Map<String, String> labels) {
        return pick(name, legend, labels, false);
    }

    public Ask.Pick many(String name, String legend, Map<String, String> labels) {
        return pick(name, legend, labels, true);
    }

    private Ask.Pick pick(String name, String legend, Map<String, String> labels, boolean many) {
        List<Ask.Option> options = new ArrayList<>();
        labels.forEach((value, label) -> {
            // The first option carries the field's own id, so that an error can lead to it.
            String id = options.isEmpty() ? name : name + "-" + value;
            options.add(new Ask.Option(id, value, label, "", typed.has(name, value)));
        });
        return new Ask.Pick(name, legend, "", List.copyOf(options), many, faults.at(name), false, Ask.Shape.LINES);
    }
}
