package newel.web;

import io.javalin.http.Context;
import java.util.List;

/** A form sent from a page that had been open too long: what was typed, ready to be sent again. */
public record ExpiredPage(String action, List<Typed> typed) {
    public record Typed(String name, String value) {}

    static ExpiredPage of(Context ctx) {
        List<Typed> typed = ctx.formParamMap().entrySet().stream()
                .filter(entry -> !entry.getKey().equals(FormToken.FIELD))
                .flatMap(entry -> entry.getValue().stream().map(value -> new Typed(entry.getKey(), value)))
                .toList();
        return new ExpiredPage(ctx.path(), typed);
    }

    /** What holds words worth reading over. */
    public List<Typed> shown() {
        return typed.stream().filter(one -> !one.value().isBlank()).toList();
    }
}
