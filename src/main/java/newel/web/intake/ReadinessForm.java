package newel.web.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Disease;
import newel.client.FallsAnswers;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Symptom;
import newel.client.Vitals;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Span;
import newel.web.form.Typed;

/** What is asked before starting. A question left open counts as not known, never as no. */
final class ReadinessForm {
    record Answered(ReadinessAnswers readiness, FallsAnswers falls, Vitals vitals) {}

    private static final Span FALLS = Span.of("the number of falls", "", 0, 99);
    private static final Span SYSTOLIC = Span.of("the upper blood pressure", "mmHg", 60, 280);
    private static final Span DIASTOLIC = Span.of("the lower blood pressure", "mmHg", 30, 180);
    private static final Span PULSE = Span.of("the resting pulse", "", 25, 220);
    private static final Span TEMPERATURE = Span.of("the temperature", "°C", 30, 43);
    private static final Span DROP = Span.of("the fall on standing", "mmHg", 0, 120);
    private static final Span GAIN = Span.of("the weight gained", "kg", 0, 20);
    private static final Span OXYGEN = Span.of("the oxygen reading", "%", 50, 100);

    static List<Ask> asks(Asking ask) {
        return List.of(
                new Ask.Group(
                        "Signs asked first",
                        "Has the client any of these now or lately? A yes here may stop everything else.",
                        all(ask, "readiness-flag-", RedFlag.values(), RedFlag::words)),
                new Ask.Group(
                        "Signs of heart and lungs",
                        "New, or never looked at by a doctor.",
                        all(ask, "readiness-sign-", Symptom.values(), Symptom::words)),
                new Ask.Group("Known illness", "", all(ask, "readiness-disease-", Disease.values(), Disease::words)),
                new Ask.Group(
                        "Exercise so far",
                        "",
                        List.of(
                                row(
                                        ask,
                                        "readiness-regular",
                                        "Planned exercise, 30 minutes on 3 days a week for the last 3 months"),
                                row(ask, "readiness-vigorous", "Wants to work hard, out of breath"),
                                row(
                                        ask,
                                        "readiness-cleared",
                                        "A clinician said within 12 months that exercise may go on, and nothing has changed"),
                                row(
                                        ask,
                                        "readiness-signs-cleared",
                                        "A clinician has looked at the signs answered yes above, and said that exercise may go on"),
                                row(
                                        ask,
                                        "readiness-pulse-medicine",
                                        "Takes medicine that slows the pulse, such as a beta-blocker"))),
                new Ask.Group("Falls in the last 12 months", "", falls(ask)),
                new Ask.Group("At rest today", "Leave out what was not measured.", vitals(ask)));
    }

    private static List<Ask> falls(Asking ask) {
        return List.of(
                ask.line("readiness-falls", "How many falls").keys("numeric").maybe(),
                row(ask, "readiness-falls-injured", "A fall needed care"),
                row(ask, "readiness-falls-floor", "Lay on the floor for an hour, or could not get up"),
                row(ask, "readiness-falls-fainted", "Lost consciousness"),
                row(ask, "readiness-falls-frail", "Is frail: tired, weak, lost weight, slow"),
                row(ask, "readiness-falls-unsteady", "Feels unsteady when standing or walking"),
                row(ask, "readiness-falls-worried", "Worries about falling"));
    }

    private static List<Ask> vitals(Asking ask) {
        return List.of(
                ask.line("readiness-systolic", "Blood pressure, upper")
                        .unit("mmHg")
                        .maybe(),
                ask.line("readiness-diastolic", "Blood pressure, lower")
                        .unit("mmHg")
                        .maybe(),
                ask.line("readiness-pulse", "Pulse in a minute").keys("numeric").maybe(),
                ask.line("readiness-oxygen", "Oxygen").unit("%").maybe(),
                ask.line("readiness-temperature", "Temperature").unit("°C").maybe(),
                ask.line("readiness-drop", "Fall of the upper blood pressure on standing")
                        .unit("mmHg")
                        .maybe(),
                ask.line("readiness-gain", "Weight gained in the last 3 days, with heart failure")
                        .unit("kg")
                        .maybe(),
                row(ask, "readiness-feels", "Feels it: light-headed, headache, sight changed, chest pain"));
    }

    private static <E extends Enum<E>> List<Ask> all(
            Asking ask, String prefix, E[] questions, Function<E, String> words) {
        List<Ask> asks = new ArrayList<>();
        for (E question : questions) {
            asks.add(row(ask, prefix + Choice.of(question), words.apply(question)));
        }
        return asks;
    }

    private static Ask row(Asking ask, String name, String legend) {
        return ask.one(name, legend, HomeForm.answers()).shaped(Ask.Shape.ROW);
    }

    static Parsed<Answered> parse(Typed typed) {
        Reading reading = new Reading(typed);
        ReadinessAnswers readiness = new ReadinessAnswers(
                answer(reading, "readiness-regular"),
                answers(reading, "readiness-disease-", Disease.class),
                answers(reading, "readiness-sign-", Symptom.class),
                answers(reading, "readiness-flag-", RedFlag.class),
                answer(reading, "readiness-vigorous"),
                answer(reading, "readiness-cleared"),
                answer(reading, "readiness-signs-cleared"),
                answer(reading, "readiness-pulse-medicine"));
        FallsAnswers falls = new FallsAnswers(
                reading.optionalWhole("readiness-falls", FALLS),
                answer(reading, "readiness-falls-injured"),
                answer(reading, "readiness-falls-floor"),
                answer(reading, "readiness-falls-fainted"),
                answer(reading, "readiness-falls-frail"),
                answer(reading, "readiness-falls-unsteady"),
                answer(reading, "readiness-falls-worried"));
        Vitals vitals = vitals(reading);
        return reading.result(() -> new Answered(readiness, falls, vitals));
    }

    private static Vitals vitals(Reading reading) {
        Integer upper = reading.optionalWhole("readiness-systolic", SYSTOLIC);
        Integer lower = reading.optionalWhole("readiness-diastolic", DIASTOLIC);
        reading.check(
                upper == null || lower == null || upper > lower,
                "readiness-systolic",
                "Check the blood pressure: the upper figure must be larger than the lower one.");
        return new Vitals(
                upper,
                lower,
                reading.optionalWhole("readiness-pulse", PULSE),
                reading.optionalWhole("readiness-oxygen", OXYGEN),
                reading.optionalNumber("readiness-temperature", TEMPERATURE),
                reading.optionalWhole("readiness-drop", DROP),
                reading.optionalNumber("readiness-gain", GAIN),
                answer(reading, "readiness-feels"));
    }

    private static Answer answer(Reading reading, String field) {
        return reading.one(field, Answer.class, Answer.UNKNOWN);
    }

    private static <E extends Enum<E>> Answers<E> answers(Reading reading, String prefix, Class<E> questions) {
        Map<E, Answer> given = new EnumMap<>(questions);
        for (E question : questions.getEnumConstants()) {
            given.put(question, answer(reading, prefix + Choice.of(question)));
        }
        return new Answers<>(given);
    }

    static Typed fill(Typed typed, ReadinessAnswers r, FallsAnswers f, Vitals v) {
        Typed filled = typed.with("readiness-regular", Choice.of(r.regularExercise()))
                .with("readiness-vigorous", Choice.of(r.wantsVigorous()))
                .with("readiness-cleared", Choice.of(r.clearedWithinYear()))
                .with("readiness-signs-cleared", Choice.of(r.symptomsCleared()))
                .with("readiness-pulse-medicine", Choice.of(r.pulseLoweringMedicine()))
                .with("readiness-falls", Span.plain(f.fallsPastYear()))
                .with("readiness-falls-injured", Choice.of(f.injured()))
                .with("readiness-falls-floor", Choice.of(f.unableToRise()))
                .with("readiness-falls-fainted", Choice.of(f.lostConsciousness()))
                .with("readiness-falls-frail", Choice.of(f.frail()))
                .with("readiness-falls-unsteady", Choice.of(f.unsteady()))
                .with("readiness-falls-worried", Choice.of(f.worried()))
                .with("readiness-systolic", Span.plain(v.systolic()))
                .with("readiness-diastolic", Span.plain(v.diastolic()))
                .with("readiness-pulse", Span.plain(v.restingPulse()))
                .with("readiness-oxygen", Span.plain(v.oxygen()))
                .with("readiness-temperature", Span.plain(v.temperatureC()))
                .with("readiness-drop", Span.plain(v.posturalDrop()))
                .with("readiness-gain", Span.plain(v.weightGainKg()))
                .with("readiness-feels", Choice.of(v.symptoms()));
        filled = each(filled, "readiness-disease-", Disease.values(), r.knownDisease()::to);
        filled = each(filled, "readiness-sign-", Symptom.values(), r.symptoms()::to);
        return each(filled, "readiness-flag-", RedFlag.values(), r.redFlags()::to);
    }

    private static <E extends Enum<E>> Typed each(Typed typed, String prefix, E[] questions, Function<E, Answer> to) {
        Typed filled = typed;
        for (E question : questions) {
            filled = filled.with(prefix + Choice.of(question), Choice.of(to.apply(question)));
        }
        return filled;
    }

    private ReadinessForm() {}
}
