package newel.web.form;

import java.util.List;
import newel.client.Answer;
import newel.client.Vitals;

/** What is measured at rest; every field may be left out. The names of its fields begin with the prefix. */
public record VitalsForm(String prefix) {
    private static final Span SYSTOLIC = Span.of("the upper blood pressure", "mmHg", 60, 280);
    private static final Span DIASTOLIC = Span.of("the lower blood pressure", "mmHg", 30, 180);
    private static final Span PULSE = Span.of("the resting pulse", "", 25, 220);
    private static final Span TEMPERATURE = Span.of("the temperature", "°C", 30, 43);
    private static final Span DROP = Span.of("the fall on standing", "mmHg", 0, 120);
    private static final Span GAIN = Span.of("the weight gained", "kg", 0, 20);
    private static final Span OXYGEN = Span.of("the oxygen reading", "%", 50, 100);

    public List<Ask> asks(Asking ask) {
        return List.of(
                number(ask, "systolic", "Blood pressure, upper", "mmHg"),
                number(ask, "diastolic", "Blood pressure, lower", "mmHg"),
                ask.line(prefix + "pulse", "Pulse in a minute").keys("numeric").maybe(),
                number(ask, "oxygen", "Oxygen", "%"),
                number(ask, "temperature", "Temperature", "°C"),
                number(ask, "drop", "Fall of the upper blood pressure on standing", "mmHg"),
                number(ask, "drop-lower", "Fall of the lower blood pressure on standing", "mmHg"),
                number(ask, "gain", "Weight gained in the last 3 days, with heart failure", "kg"),
                ask.one(
                                prefix + "feels",
                                "Feels it: light-headed, headache, sight changed, chest pain",
                                Choice.answers())
                        .shaped(Ask.Shape.ROW));
    }

    private Ask number(Asking ask, String name, String label, String unit) {
        return ask.line(prefix + name, label).unit(unit).maybe();
    }

    public Vitals read(Reading reading) {
        Integer upper = reading.optionalWhole(prefix + "systolic", SYSTOLIC);
        Integer lower = reading.optionalWhole(prefix + "diastolic", DIASTOLIC);
        reading.check(
                upper == null || lower == null || upper > lower,
                prefix + "systolic",
                "Check the blood pressure: the upper figure must be larger than the lower one.");
        return new Vitals(
                upper,
                lower,
                reading.optionalWhole(prefix + "pulse", PULSE),
                reading.optionalWhole(prefix + "oxygen", OXYGEN),
                reading.optionalNumber(prefix + "temperature", TEMPERATURE),
                reading.optionalWhole(prefix + "drop", DROP),
                reading.optionalNumber(prefix + "gain", GAIN),
                reading.one(prefix + "feels", Answer.class, Answer.UNKNOWN),
                reading.optionalWhole(prefix + "drop-lower", DROP));
    }

    public Typed fill(Typed typed, Vitals v) {
        return typed.with(prefix + "systolic", Span.plain(v.systolic()))
                .with(prefix + "diastolic", Span.plain(v.diastolic()))
                .with(prefix + "pulse", Span.plain(v.restingPulse()))
                .with(prefix + "oxygen", Span.plain(v.oxygen()))
                .with(prefix + "temperature", Span.plain(v.temperatureC()))
                .with(prefix + "drop", Span.plain(v.posturalDrop()))
                .with(prefix + "drop-lower", Span.plain(v.posturalDropLower()))
                .with(prefix + "gain", Span.plain(v.weightGainKg()))
                .with(prefix + "feels", Choice.of(v.symptoms()));
    }
}
