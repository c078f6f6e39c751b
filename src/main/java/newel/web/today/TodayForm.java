package newel.web.today;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.DayAnswers;
import newel.client.DaySign;
import newel.client.Vitals;
import newel.screen.Glucose;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Rows;
import newel.web.form.Span;
import newel.web.form.Typed;
import newel.web.form.VitalsForm;

/**
 * The questions before a session. Each has to be answered; what is measured may be left out.
 *
 * @param sugar whether the blood sugar is asked of this client
 */
record TodayForm(boolean sugar) {
    /** @param glucose null when it was not measured or not asked */
    record Checking(DayAnswers answers, Glucose glucose) {}

    private static final Rows<DaySign> SIGNS = new Rows<>("today-", DaySign.class, DaySign::words);
    private static final VitalsForm VITALS = new VitalsForm("today-");
    private static final Span PAIN = Span.of("the pain", "", 0, 10);
    private static final Span MG_DL = Span.of("the blood sugar", "mg/dL", 20, 600);
    private static final Span MMOL_L = Span.of("the blood sugar", "mmol/L", 1, 34);

    List<Ask> asks(Asking ask) {
        List<Ask> asks = new ArrayList<>();
        asks.add(new Ask.Group("Since last time, and now", "", SIGNS.asks(ask)));
        asks.add(ask.line("today-pain", "Pain at rest now, where it is worst")
                .keys("numeric")
                .hint("0 is none, 10 is as bad as it can be."));
        if (sugar) {
            asks.add(new Ask.Group("Blood sugar", "Asked because of the medicine.", sugarAsks(ask)));
        }
        asks.add(new Ask.Group("Measured now", "Leave out what was not measured.", VITALS.asks(ask)));
        return asks;
    }

    private static List<Ask> sugarAsks(Asking ask) {
        return List.of(
                ask.line("today-sugar", "Blood sugar").keys("decimal").maybe(),
                ask.one("today-sugar-unit", "In", units())
                        .shaped(Ask.Shape.BESIDE)
                        .maybe(),
                ask.one("today-ketones", "Ketones", ketones()).maybe().hint("From 250 mg/dL or 13.9 mmol/L on."),
                Rows.row(ask, "today-helped", "Needed help with a low sugar in the last 24 hours"),
                Rows.row(ask, "today-alone", "Nobody else is near during the session"));
    }

    private static Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        for (Glucose.Unit unit : Glucose.Unit.values()) {
            units.put(Choice.of(unit), unit.words());
        }
        return units;
    }

    private static Map<String, String> ketones() {
        Map<String, String> ketones = new LinkedHashMap<>();
        ketones.put(Choice.of(Glucose.Ketones.NONE_OR_TRACE), "None or a trace");
        ketones.put(Choice.of(Glucose.Ketones.MODERATE_OR_LARGE), "Moderate or large, or 1.5 mmol/L or more in blood");
        ketones.put(Choice.of(Glucose.Ketones.NOT_KNOWN), "Not tested");
        return ketones;
    }

    Parsed<Checking> parse(Typed typed) {
        Reading reading = new Reading(typed);
        Answers<DaySign> signs = SIGNS.readAll(reading);
        Integer pain = reading.whole("today-pain", PAIN);
        Glucose glucose = sugar ? glucose(reading, typed) : null;
        Vitals vitals = VITALS.read(reading);
        return reading.result(() -> new Checking(new DayAnswers(signs, pain, vitals), glucose));
    }

    private static Glucose glucose(Reading reading, Typed typed) {
        Answer helped = reading.one("today-helped", Answer.class, "Answer: help with a low sugar in 24 hours.");
        Answer alone = reading.one("today-alone", Answer.class, "Answer: whether somebody is near.");
        if (typed.one("today-sugar").isEmpty()) {
            return null;
        }
        Glucose.Unit unit = reading.one("today-sugar-unit", Glucose.Unit.class, "Choose the unit of the blood sugar.");
        if (unit == null) {
            return null;
        }
        Double value = reading.number("today-sugar", unit == Glucose.Unit.MG_DL ? MG_DL : MMOL_L);
        Glucose.Ketones ketones = reading.one("today-ketones", Glucose.Ketones.class, Glucose.Ketones.NOT_KNOWN);
        return value == null ? null : new Glucose(BigDecimal.valueOf(value), unit, ketones, helped, alone);
    }
}
