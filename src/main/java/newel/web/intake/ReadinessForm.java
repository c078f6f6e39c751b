package newel.web.intake;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import newel.client.Answer;
import newel.client.Disease;
import newel.client.FallsAnswers;
import newel.client.PulseGuard;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Symptom;
import newel.client.Vitals;
import newel.screen.RedFlagRule;
import newel.screen.Urgency;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Choice;
import newel.web.form.DateBoxes;
import newel.web.form.Parsed;
import newel.web.form.Reading;
import newel.web.form.Rows;
import newel.web.form.Typed;
import newel.web.form.VitalsForm;

/** What is asked before starting. A question left open counts as not known, never as no. */
final class ReadinessForm {
    record Answered(ReadinessAnswers readiness, FallsAnswers falls, Vitals vitals) {}

    private static final Rows<RedFlag> FLAGS = new Rows<>("readiness-flag-", RedFlag.class, RedFlag::words);
    private static final Rows<Symptom> SIGNS = new Rows<>("readiness-sign-", Symptom.class, Symptom::words);
    private static final Rows<Disease> DISEASES = new Rows<>("readiness-disease-", Disease.class, Disease::words);
    private static final Rows<PulseGuard> GUARDS = new Rows<>("readiness-guard-", PulseGuard.class, PulseGuard::words);
    private static final VitalsForm VITALS = new VitalsForm("readiness-");
    private static final String CLEARED_ON = "readiness-cleared-on";

    static List<Ask> asks(Asking ask) {
        return List.of(
                new Ask.Group(
                        "Signs asked first",
                        "Has the client any of these now or lately? A yes here stops everything else: call first.",
                        flags(ask, Urgency.EMERGENCY)),
                new Ask.Group("Signs that a doctor looks at today", "Now or lately.", flags(ask, Urgency.SAME_DAY)),
                new Ask.Group(
                        "Signs to have looked at",
                        "A yes is no alarm, but somebody should look.",
                        flags(ask, Urgency.ROUTINE)),
                new Ask.Group(
                        "Signs of heart and lungs",
                        "New, or never looked at by a doctor. One swollen leg is asked above; here it is both ankles.",
                        SIGNS.asks(ask)),
                new Ask.Group(
                        "Known illness",
                        "Lung disease, smoking, age, or blood pressure under control do not count by themselves.",
                        DISEASES.asks(ask)),
                new Ask.Group("Exercise so far", "", exercise(ask)),
                new Ask.Group(
                        "Medicine and the heart's rhythm", "These decide whether a pulse can be aimed at.", pulse(ask)),
                new Ask.Group("Falls in the last 12 months", "", FallsForm.asks(ask)),
                new Ask.Group("At rest today", "Leave out what was not measured.", VITALS.asks(ask)));
    }

    private static List<Ask> flags(Asking ask, Urgency urgency) {
        return FLAGS.asks(ask, flag -> RedFlagRule.of(flag).urgency() == urgency);
    }

    private static List<Ask> exercise(Asking ask) {
        return List.of(
                Rows.row(
                        ask,
                        "readiness-regular",
                        "Planned exercise of moderate effort, 30 minutes on 3 days a week for the last 3 months"),
                Rows.row(ask, "readiness-vigorous", "Wants to work hard, out of breath"),
                Rows.row(
                        ask,
                        "readiness-cleared",
                        "A clinician said within 12 months that exercise may go on, and nothing has changed"),
                ask.day(CLEARED_ON, "The day that the clinician said so")
                        .hint("It counts for 12 months from that day.")
                        .maybe(),
                Rows.row(
                        ask,
                        "readiness-signs-cleared",
                        "A clinician has looked at the signs answered yes above, and said that exercise may go on"));
    }

    private static List<Ask> pulse(Asking ask) {
        List<Ask> asks = new java.util.ArrayList<>();
        asks.add(Rows.row(
                ask, "readiness-pulse-medicine", "Takes medicine that slows the pulse, such as a beta-blocker"));
        asks.addAll(GUARDS.asks(ask));
        asks.add(Rows.row(
                ask, "readiness-sugar-medicine", "Takes insulin, or tablets that can make the blood sugar too low"));
        return asks;
    }

    static Parsed<Answered> parse(Typed typed, LocalDate today) {
        Reading reading = new Reading(typed);
        ReadinessAnswers readiness = readiness(reading, today);
        FallsAnswers falls = FallsForm.read(reading);
        Vitals vitals = VITALS.read(reading);
        return reading.result(() -> new Answered(readiness, falls, vitals));
    }

    private static ReadinessAnswers readiness(Reading reading, LocalDate today) {
        return new ReadinessAnswers(
                Rows.answer(reading, "readiness-regular"),
                DISEASES.read(reading),
                SIGNS.read(reading),
                FLAGS.read(reading),
                Rows.answer(reading, "readiness-vigorous"),
                Rows.answer(reading, "readiness-cleared"),
                Rows.answer(reading, "readiness-signs-cleared"),
                Rows.answer(reading, "readiness-pulse-medicine"),
                GUARDS.read(reading),
                Rows.answer(reading, "readiness-sugar-medicine"),
                clearedOn(reading, today));
    }

    private static LocalDate clearedOn(Reading reading, LocalDate today) {
        LocalDate on = reading.optionalDate(CLEARED_ON, "the day of the clearance");
        reading.check(
                on == null || !on.isAfter(today), CLEARED_ON, "Check the day of the clearance: it lies in the future.");
        return on;
    }

    static Typed fill(Typed typed, ReadinessAnswers r, FallsAnswers f, Vitals v) {
        Typed filled = typed.with("readiness-regular", Choice.of(r.regularExercise()))
                .with("readiness-vigorous", Choice.of(r.wantsVigorous()))
                .with("readiness-cleared", Choice.of(r.clearedWithinYear()))
                .with("readiness-signs-cleared", Choice.of(r.symptomsCleared()))
                .with("readiness-pulse-medicine", Choice.of(r.pulseLoweringMedicine()))
                .with("readiness-sugar-medicine", Choice.of(r.lowSugarMedicine()));
        filled = DateBoxes.fill(filled, CLEARED_ON, r.clearedOn());
        filled = FallsForm.fill(filled, f);
        filled = VITALS.fill(filled, v);
        filled = DISEASES.fill(filled, r.knownDisease());
        filled = SIGNS.fill(filled, r.symptoms());
        filled = GUARDS.fill(filled, r.pulseGuards());
        return FLAGS.fill(filled, r.redFlags());
    }

    /** Somebody has to look today at something that was answered yes or measured. */
    static boolean alarms(Answered answered) {
        return Arrays.stream(RedFlag.values())
                .filter(flag -> answered.readiness().redFlags().to(flag) == Answer.YES)
                .anyMatch(flag -> RedFlagRule.of(flag).urgency() != Urgency.ROUTINE);
    }

    private ReadinessForm() {}
}
