package newel.web.pain;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import newel.client.Answer;
import newel.screen.PainKind;
import newel.screen.PainLog;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Rows;
import newel.web.form.Span;
import newel.web.form.Typed;

/** Pain of one session. The next morning may be told later. */
final class PainForm {
    record Logging(String where, PainLog log) {}

    /** The next morning of a session that was logged before. */
    static final String MORNING = "morning";

    private static final String NEXT = "pain-next";
    private static final String MORNING_WORDS = "the pain of the next morning";
    private static final int LONGEST = 120;

    static List<Ask> asks(Asking ask) {
        return List.of(
                ask.one("pain-kind", "What kind of pain", kinds())
                        .hint("Only the first is measured by zones. The others are signs that somebody must look at."),
                ask.line("pain-where", "Where, in the client's words"),
                number(ask, "pain-during", "Worst during the session"),
                number(ask, "pain-after", "Worst in the hours after"),
                number(ask, "pain-usual", "On a usual morning"),
                ask.line(NEXT, "The next morning").keys("decimal").maybe().hint("Leave it out until it is known."),
                Rows.row(ask, "pain-week", "Pain or stiffness is rising from week to week"),
                Rows.row(ask, "pain-rest", "More than 5 at rest"),
                Rows.row(ask, "pain-alarming", "Pain at night, new swelling, locking or giving way"));
    }

    private static Ask number(Asking ask, String name, String label) {
        return ask.line(name, label).keys("decimal").hint("0 to 10");
    }

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (PainKind kind : PainKind.values()) {
            kinds.put(Choice.of(kind), kind.words());
        }
        return kinds;
    }

    static Parsed<Logging> parse(Typed typed) {
        Reading reading = new Reading(typed);
        PainKind kind = reading.one("pain-kind", PainKind.class, "Choose what kind of pain it is.");
        String where = reading.text("pain-where", "where it hurts", LONGEST);
        BigDecimal during = pain(reading, "pain-during", "the pain during the session");
        BigDecimal after = pain(reading, "pain-after", "the pain after the session");
        BigDecimal usual = pain(reading, "pain-usual", "the pain of a usual morning");
        BigDecimal morning = typed.one(NEXT).isEmpty() ? null : pain(reading, NEXT, MORNING_WORDS);
        Answer week = answer(reading, "pain-week", "Answer: whether it rises from week to week.");
        Answer rest = answer(reading, "pain-rest", "Answer: more than 5 at rest.");
        Answer alarming = answer(reading, "pain-alarming", "Answer: pain at night, swelling, locking or giving way.");
        return reading.result(
                () -> new Logging(where, new PainLog(kind, during, after, morning, usual, week, rest, alarming)));
    }

    static Parsed<BigDecimal> parseMorning(Typed typed) {
        Reading reading = new Reading(typed);
        BigDecimal morning = pain(reading, MORNING, MORNING_WORDS);
        return reading.result(() -> morning);
    }

    private static BigDecimal pain(Reading reading, String field, String what) {
        Double value = reading.number(field, Span.of(what, "", 0, 10));
        return value == null ? null : BigDecimal.valueOf(value);
    }

    private static Answer answer(Reading reading, String field, String ask) {
        return reading.one(field, Answer.class, ask);
    }

    private PainForm() {}
}
