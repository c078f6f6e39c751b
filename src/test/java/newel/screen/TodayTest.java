package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.math.BigDecimal;
import java.util.List;
import newel.People;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.DayAnswers;
import newel.client.DaySign;
import newel.client.Disease;
import newel.client.ReadinessAnswers;
import newel.client.Vitals;
import newel.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The check before a session. What each question calls for is told in DayRule with its source. */
class TodayTest {
    private static final Vitals WELL = new Vitals(128, 76, 70, null, null, null, null, Answer.NO);

    @Test
    void with_nothing_to_tell_the_session_goes_on() {
        assertEquals(new Today.Go(List.of()), today(answers(0, WELL), null, fit()));
    }

    @ParameterizedTest
    @CsvSource({
        "CHEST,        YES,     NotToday,  EMERGENCY",
        "CHEST,        UNKNOWN, NotToday,  DOCTOR_TODAY",
        "STROKE,       YES,     NotToday,  EMERGENCY",
        "STROKE,       UNKNOWN, NotToday,  DOCTOR_TODAY",
        "BREATH,       YES,     NotToday,  DOCTOR_TODAY",
        "BREATH,       UNKNOWN, NotToday,  NOBODY",
        "FAINTED,      YES,     NotToday,  DOCTOR_TODAY",
        "HEART_RACED,  YES,     NotToday,  DOCTOR_TODAY",
        "LEG,          YES,     NotToday,  DOCTOR_TODAY",
        "HURT_BY_FALL, YES,     NotToday,  DOCTOR_TODAY",
        "DIZZY,        YES,     NotToday,  NOBODY",
        "ILL,          YES,     NotToday,  NOBODY",
        "FELL,         YES,     LightOnly, ",
        "NEW_PAIN,     YES,     LightOnly, ",
        "MEDICINE,     UNKNOWN, LightOnly, ",
        "SLEPT_BADLY,  YES,     LightOnly, "
    })
    void each_question_decides_as_its_rule_says(DaySign sign, Answer answer, String outcome, Today.Whom whom) {
        Answers<DaySign> signs = Answers.onlyYes(DaySign.class).with(sign, answer);

        Today found = today(new DayAnswers(signs, 0, WELL), null, fit());

        assertEquals(outcome, found.getClass().getSimpleName());
        if (found instanceof Today.NotToday not) {
            assertEquals(whom, not.whom());
        }
    }

    /** E2 with D1, E4 with D7 of the red flags. */
    @ParameterizedTest
    @CsvSource({"LEG, BREATH", "FAINTED, HEART_RACED", "FAINTED, BREATH"})
    void two_signs_together_are_an_emergency(DaySign one, DaySign other) {
        Today found = today(new DayAnswers(Answers.onlyYes(DaySign.class, one, other), 0, WELL), null, fit());

        assertEquals(
                Today.Whom.EMERGENCY,
                assertInstanceOf(Today.NotToday.class, found).whom());
    }

    /** Over 5 at rest is a design choice after the pain-monitoring model. */
    @ParameterizedTest
    @CsvSource({"5, Go", "6, NotToday", ", LightOnly"})
    void pain_at_rest_counts(Integer pain, String outcome) {
        assertEquals(outcome, today(answers(pain, WELL), null, fit()).getClass().getSimpleName());
    }

    @Test
    void what_was_measured_today_holds_today() {
        Vitals high = new Vitals(184, 96, 70, null, null, null, null, Answer.NO);

        assertEquals(
                new Today.NotToday(
                        Today.Whom.DOCTOR_TODAY,
                        List.of(new Finding(
                                new newel.source.Rule("D8-REST", "ESC/ESH", newel.source.Known.FROM_MEMORY),
                                "Blood pressure 184/96."))),
                today(answers(0, high), null, fit()));
    }

    @Test
    void who_may_do_nothing_anyway_does_nothing_today() {
        Today found = today(answers(0, WELL), null, People.mustBeReferred());

        assertInstanceOf(Today.NotToday.class, found);
    }

    @Test
    void sugar_is_asked_only_of_those_whose_medicine_can_make_it_low() {
        Glucose low =
                new Glucose(new BigDecimal("80"), Glucose.Unit.MG_DL, Glucose.Ketones.NOT_KNOWN, Answer.NO, Answer.NO);

        assertInstanceOf(Today.Go.class, today(answers(0, WELL), null, medicine(Answer.NO)));
        assertEquals(
                Today.Whom.NOBODY,
                assertInstanceOf(Today.NotToday.class, today(answers(0, WELL), null, medicine(Answer.YES)))
                        .whom());
        assertEquals(
                List.of("Blood sugar 80 mg/dL: 15 to 30 g of fast carbohydrate before the start."),
                assertInstanceOf(Today.Go.class, today(answers(0, WELL), low, medicine(Answer.YES))).reasons().stream()
                        .map(Finding::text)
                        .toList());
        assertInstanceOf(Today.NotToday.class, today(answers(0, WELL), null, medicine(Answer.UNKNOWN)));
    }

    private static DayAnswers answers(Integer pain, Vitals vitals) {
        return new DayAnswers(Answers.onlyYes(DaySign.class), pain, vitals);
    }

    private static Today today(DayAnswers answers, Glucose glucose, Client client) {
        return Today.of(answers, glucose, client, Choices.strict(), People.TODAY);
    }

    private static Client fit() {
        return People.fitAndBored();
    }

    /** Diabetes, cleared this year, and that medicine. */
    private static Client medicine(Answer lowSugar) {
        Client c = People.fitAndBored();
        ReadinessAnswers r = c.readiness();
        ReadinessAnswers answers = new ReadinessAnswers(
                r.regularExercise(),
                Answers.onlyYes(Disease.class, Disease.DIABETES),
                r.symptoms(),
                r.redFlags(),
                Answer.NO,
                Answer.YES,
                r.symptomsCleared(),
                r.pulseLoweringMedicine(),
                r.pulseGuards(),
                lowSugar,
                People.TODAY);
        return new Client(
                c.id(), c.profile(), c.home(), c.wishes(), answers, c.falls(), c.vitals(), c.measures(), List.of());
    }
}
