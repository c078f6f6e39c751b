package newel.screen;

import static newel.client.Answer.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Disease;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Symptom;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ReadinessTest {
    private static final Rule A1 = new Rule("A1", "Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479", Known.SEEN);

    /** Worked cases after Riebe et al. 2015: hypertension under control is no known disease and sets nothing off. */
    @Test
    void controlled_pressure_alone_needs_no_clearance() {
        assertEquals(
                new Readiness.Clear(Row.A3, Intensity.LIGHT_TO_MODERATE),
                Readiness.of(answers(NO, NO, none(), Answers.onlyYes(Symptom.class))));
    }

    /** Riebe et al. 2015: any sign before starting asks for clearance, then light to moderate. */
    @Test
    void swollen_ankles_wait_for_a_clinician() {
        assertEquals(
                new Readiness.Wait(
                        Row.A1,
                        Who.CLINICIAN,
                        Intensity.LIGHT_TO_MODERATE,
                        List.of(new Finding(A1, "Both ankles swell."))),
                Readiness.of(answers(NO, NO, none(), Answers.onlyYes(Symptom.class, Symptom.ANKLE_SWELLING))));
    }

    /** Riebe et al. 2015, row for the active without disease or signs. */
    @Test
    void the_fit_and_well_may_work_vigorously() {
        assertEquals(
                new Readiness.Clear(Row.B3, Intensity.MODERATE_OR_VIGOROUS),
                Readiness.of(answers(YES, YES, none(), Answers.onlyYes(Symptom.class))));
    }

    /** Riebe et al. 2015: known disease, active, wants vigorous. */
    @Test
    void intervals_with_a_history_of_angina_wait_while_moderate_work_goes_on() {
        Readiness.ClearWithLimits limited = assertInstanceOf(
                Readiness.ClearWithLimits.class,
                Readiness.of(answers(
                        YES, YES, Answers.onlyYes(Disease.class, Disease.HEART), Answers.onlyYes(Symptom.class))));

        assertEquals(Row.B2V, limited.row());
        assertEquals(Intensity.MODERATE, limited.intensity());
        assertEquals(List.of("Vigorous work waits for a clinician; moderate work goes on."), texts(limited.reasons()));
    }

    /** Riebe et al. 2015: a sign while active means stop and seek clearance. */
    @Test
    void new_dizziness_stops_what_goes_on() {
        Readiness.Stop stop = assertInstanceOf(
                Readiness.Stop.class,
                Readiness.of(answers(YES, NO, none(), Answers.onlyYes(Symptom.class, Symptom.DIZZY_OR_FAINT))));

        assertEquals(Row.B1, stop.row());
        assertEquals(Urgency.ROUTINE, stop.urgency());
        assertEquals(List.of("Dizzy, or fainted."), texts(stop.reasons()));
    }

    @Test
    void known_disease_without_exercise_waits_until_cleared_within_the_year() {
        ReadinessAnswers open =
                answers(NO, NO, Answers.onlyYes(Disease.class, Disease.DIABETES), Answers.onlyYes(Symptom.class));

        assertInstanceOf(Readiness.Wait.class, Readiness.of(open));
        assertEquals(
                Intensity.LIGHT_TO_MODERATE,
                assertInstanceOf(Readiness.ClearWithLimits.class, Readiness.of(cleared(open)))
                        .intensity());
    }

    @Test
    void a_clearance_for_exercise_does_not_clear_a_sign() {
        ReadinessAnswers open = answers(NO, NO, none(), Answers.onlyYes(Symptom.class, Symptom.PALPITATIONS));

        assertInstanceOf(Readiness.Wait.class, Readiness.of(cleared(open)));
    }

    @ParameterizedTest
    @EnumSource(Symptom.class)
    void a_sign_that_nobody_answered_is_not_read_as_no(Symptom sign) {
        Answers<Symptom> symptoms = Answers.onlyYes(Symptom.class).with(sign, UNKNOWN);

        Readiness.Wait wait = assertInstanceOf(Readiness.Wait.class, Readiness.of(answers(NO, NO, none(), symptoms)));

        assertEquals(Who.CLIENT, wait.who());
        assertEquals(List.of("Not answered yet: " + sign.words() + "."), texts(wait.reasons()));
    }

    @Test
    void a_disease_that_nobody_answered_waits_for_the_client() {
        Answers<Disease> diseases = none().with(Disease.KIDNEY, UNKNOWN);

        Readiness.Wait wait = assertInstanceOf(
                Readiness.Wait.class, Readiness.of(answers(NO, NO, diseases, Answers.onlyYes(Symptom.class))));

        assertEquals(Row.A2, wait.row());
        assertEquals(List.of("Not answered yet: Kidney disease."), texts(wait.reasons()));
    }

    /** Levels: NHS, NICE, BACR, spinal pathways and others, one source a rule in RedFlagRule. */
    @ParameterizedTest
    @EnumSource(RedFlag.class)
    void a_red_flag_acts_at_its_level(RedFlag flag) {
        Readiness found = Readiness.of(flagged(flag, YES));

        switch (flag.code().charAt(0)) {
            case 'E' ->
                assertEquals(
                        Urgency.EMERGENCY,
                        assertInstanceOf(Readiness.Stop.class, found).urgency());
            case 'D' ->
                assertEquals(
                        Urgency.SAME_DAY,
                        assertInstanceOf(Readiness.Stop.class, found).urgency());
            default -> assertEquals(List.of(RedFlagRule.of(flag).raised()), found.reasons());
        }
    }

    /** Design choice: an emergency question without an answer counts as same day; the others are asked first. */
    @ParameterizedTest
    @EnumSource(RedFlag.class)
    void a_red_flag_that_nobody_answered_is_never_read_as_no(RedFlag flag) {
        Readiness found = Readiness.of(flagged(flag, UNKNOWN));

        assertEquals(List.of(RedFlagRule.of(flag).unanswered()), found.reasons());
        if (flag.code().startsWith("E")) {
            assertEquals(
                    Urgency.SAME_DAY,
                    assertInstanceOf(Readiness.Stop.class, found).urgency());
        } else if (flag.code().startsWith("D")) {
            assertEquals(
                    Who.CLIENT, assertInstanceOf(Readiness.Wait.class, found).who());
        }
    }

    /** Triage examples: E, D and R as published by the sources that each rule names; the highest level wins. */
    @ParameterizedTest
    @CsvSource({
        "chest pressure at rest with sweating,      CHEST_PAIN_NOW,   ,                 EMERGENCY, E1",
        "saddle numbness and cannot pass urine,     SADDLE_NUMBNESS,  ,                 EMERGENCY, E5",
        "calf swollen and now breathless,           ONE_LEG_SWELLING, NEW_BREATHLESSNESS, EMERGENCY, E2",
        "hot swollen knee and 38.5 degrees,         FEVER_WITH_PAIN,  ,                 SAME_DAY,  D2",
        "calf swollen alone,                        ONE_LEG_SWELLING, ,                 SAME_DAY,  D1",
        "night pain and a fall that did harm,       NIGHT_PAIN,       FALL_WITH_INJURY, SAME_DAY,  D6"
    })
    void the_highest_level_wins(String told, RedFlag one, RedFlag other, Urgency urgency, String rule) {
        ReadinessAnswers answers = flagged(one, YES);
        if (other != null) {
            answers = flags(answers, answers.redFlags().with(other, YES));
        }

        Readiness.Stop stop = assertInstanceOf(Readiness.Stop.class, Readiness.of(answers));

        assertEquals(urgency, stop.urgency());
        assertEquals(
                1,
                stop.reasons().stream()
                        .filter(reason -> reason.rule().id().equals(rule))
                        .count());
    }

    @Test
    void one_swollen_leg_with_breathlessness_among_the_signs_is_an_emergency() {
        ReadinessAnswers answers = flagged(RedFlag.ONE_LEG_SWELLING, YES);
        ReadinessAnswers breathless = new ReadinessAnswers(
                NO,
                none(),
                Answers.onlyYes(Symptom.class, Symptom.BREATHLESS_AT_REST),
                answers.redFlags(),
                NO,
                NO,
                NO,
                NO);

        assertEquals(
                Urgency.EMERGENCY,
                assertInstanceOf(Readiness.Stop.class, Readiness.of(breathless)).urgency());
    }

    @Test
    void nothing_asked_is_never_a_yes_to_exercise() {
        assertInstanceOf(Readiness.Stop.class, Readiness.of(ReadinessAnswers.notAsked()));
    }

    private static Answers<Disease> none() {
        return Answers.onlyYes(Disease.class);
    }

    private static ReadinessAnswers answers(
            Answer active, Answer vigorous, Answers<Disease> diseases, Answers<Symptom> symptoms) {
        return new ReadinessAnswers(active, diseases, symptoms, Answers.onlyYes(RedFlag.class), vigorous, NO, NO, NO);
    }

    private static ReadinessAnswers cleared(ReadinessAnswers open) {
        return new ReadinessAnswers(
                open.regularExercise(),
                open.knownDisease(),
                open.symptoms(),
                open.redFlags(),
                open.wantsVigorous(),
                YES,
                NO,
                NO);
    }

    private static ReadinessAnswers flagged(RedFlag flag, Answer answer) {
        return flags(
                answers(NO, NO, none(), Answers.onlyYes(Symptom.class)),
                Answers.onlyYes(RedFlag.class).with(flag, answer));
    }

    private static ReadinessAnswers flags(ReadinessAnswers answers, Answers<RedFlag> flags) {
        return new ReadinessAnswers(
                answers.regularExercise(), answers.knownDisease(), answers.symptoms(), flags, NO, NO, NO, NO);
    }

    private static List<String> texts(List<Finding> findings) {
        return findings.stream().map(Finding::text).toList();
    }
}
