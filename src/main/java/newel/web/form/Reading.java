package newel.web.form;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads typed values field by field and collects what is wrong. A value that cannot be used reads as null; {@link
 * #result} makes the whole only when nothing is wrong.
 *
 * <p>Each method takes the field, and what to call it within a sentence: "the name".
 */
public final class Reading {
    private final Typed typed;
    private final Faults faults = new Faults();

    public Reading(Typed typed) {
        this.typed = typed;
    }

    public Faults faults() {
        return faults;
    }

    public <T> Parsed<T> result(Supplier<T> value) {
        return Parsed.of(faults, value);
    }

    public String text(String field, String what, int most) {
        String text = optionalText(field, what, most);
        if (typed.one(field).isEmpty()) {
            faults.missing(field, "Type " + what + ".");
        }
        return text;
    }

    /** Null when nothing was typed. */
    public String optionalText(String field, String what, int most) {
        String text = typed.one(field);
        if (text.length() > most) {
            faults.wrong(
                    field,
                    "Shorten " + what + ": it has " + text.length() + " characters, and " + most
                            + " is the most there is room for.");
            return null;
        }
        return text.isEmpty() ? null : text;
    }

    public Integer whole(String field, Span span) {
        Double number = number(field, span.whole());
        return number == null ? null : number.intValue();
    }

    public Integer optionalWhole(String field, Span span) {
        return typed.one(field).isEmpty() ? null : whole(field, span);
    }

    public Double number(String field, Span span) {
        String text = typed.one(field);
        if (text.isEmpty()) {
            faults.missing(field, span.ask());
            return null;
        }
        Optional<Double> read = span.read(text);
        if (read.isEmpty()) {
            faults.wrong(field, span.ask());
        }
        return read.orElse(null);
    }

    public Double optionalNumber(String field, Span span) {
        return typed.one(field).isEmpty() ? null : number(field, span);
    }

    public <E extends Enum<E>> E one(String field, Class<E> kind, String ask) {
        E chosen = Choice.read(kind, typed.one(field)).orElse(null);
        if (chosen == null) {
            faults.missing(field, ask);
        }
        return chosen;
    }

    public <E extends Enum<E>> E one(String field, Class<E> kind, E otherwise) {
        return Choice.read(kind, typed.one(field)).orElse(otherwise);
    }

    public <E extends Enum<E>> List<E> many(String field, Class<E> kind) {
        return typed.all(field).stream()
                .flatMap(text -> Choice.read(kind, text).stream())
                .distinct()
                .toList();
    }

    public LocalDate date(String field, String what) {
        LocalDate date = optionalDate(field, what);
        if (DateBoxes.empty(typed, field)) {
            faults.missing(field, "Fill in " + what + ": day, month and year.");
        }
        return date;
    }

    /** Null when all three boxes are empty. */
    public LocalDate optionalDate(String field, String what) {
        if (DateBoxes.empty(typed, field)) {
            return null;
        }
        Optional<LocalDate> read = DateBoxes.read(typed, field);
        if (read.isEmpty()) {
            faults.wrong(field, "Check " + what + ": there is no such day. Write it like 27 3 1948.");
        }
        return read.orElse(null);
    }

    /** A rule of this form alone. */
    public void check(boolean good, String field, String message) {
        if (!good) {
            faults.wrong(field, message);
        }
    }

    public void need(boolean there, String field, String message) {
        if (!there) {
            faults.missing(field, message);
        }
    }
}
