package newel.screen;

import static newel.client.Answer.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.time.LocalDate;
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
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 3);
    private static final Rule A1 = new Rule("A1", "Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479", Known.SEEN);

    /** Worked cases after Riebe et al. 2015: hypertension under control is no known disease and sets nothing off. */
    @Test
    void controlled_pressure_alone_needs_no_clearance() {
        assertEquals(
                new Readiness.Clear(Row.A3, Intensity.LIGHT_TO_MODERATE),
                readiness(answers(NO, NO, none(), Answers.onlyYes(Symptom.class))));
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
                readiness(answers(NO, NO, none(), Answers.onlyYes(Symptom.class, Symptom.ANKLE_SWELLING))));
    }

    /** Riebe et al. 2015, row for the active without disease or signs. */
    @Test
    void the_fit_and_well_may_work_vigorously() {
        assertEquals(
                new Readiness.Clear(Row.B3, Intensity.MODERATE_OR_VIGOROUS),
                readiness(answers(YES, YES, none(), Answers.onlyYes(Symptom.class))));
    }

    /** Riebe et al. 2015: known disease, active, wants vigorous. */
    @Test
    void intervals_with_a_history_of_angina_wait_while_moderate_work_goes_on() {
        Readiness.ClearWithLimits limited = assertInstanceOf(
                Readiness.ClearWithLimits.class,
                readiness(answers(
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
                readiness(answers(YES, NO, none(), Answers.onlyYes(Symptom.class, Symptom.DIZZY_OR_FAINT))));

        assertEquals(Row.B1, stop.row());
        assertEquals(Urgency.ROUTINE, stop.urgency());
        assertEquals(List.of("Dizzy, or fainted."), texts(stop.reasons()));
    }

    @Test
    void known_disease_without_exercise_waits_until_cleared_within_the_year() {
        ReadinessAnswers open =
                answers(NO, NO, Answers.onlyYes(Disease.class, Disease.DIABETES), Answers.onlyYes(Symptom.class));

        assertInstanceOf(Readiness.Wait.class, readiness(open));
        assertEquals(
                Intensity.LIGHT_TO_MODERATE,
                assertInstanceOf(Readiness.ClearWithLimits.class, readiness(cleared(open)))
                        .intensity());
    }

    @Test
    void a_clearance_for_exercise_does_not_clear_a_sign() {
        ReadinessAnswers open = answers(NO, NO, none(), Answers.onlyYes(Symptom.class, Symptom.PALPITATIONS));

        assertInstanceOf(Readiness.Wait.class, readiness(cleared(open)));
    }

    @ParameterizedTest
    @EnumSource(Symptom.class)
    void a_sign_that_nobody_answered_is_not_read_as_no(Symptom sign) {
        Answers<Symptom> symptoms = Answers.onlyYes(Symptom.class).with(sign, UNKNOWN);

        Readiness.Wait wait = assertInstanceOf(Readiness.Wait.class, readiness(answers(NO, NO, none(), symptoms)));

        assertEquals(Who.CLIENT, wait.who());
        assertEquals(List.of("Not answered yet: " + sign.words() + "."), texts(wait.reasons()));
    }

    @Test
    void a_disease_that_nobody_answered_waits_for_the_client() {
        Answers<Disease> diseases = none().with(Disease.KIDNEY, UNKNOWN);

        Readiness.Wait wait = assertInstanceOf(
                Readiness.Wait.class, readiness(answers(NO, NO, diseases, Answers.onlyYes(Symptom.class))));

        assertEquals(Row.A2, wait.row());
        assertEquals(List.of("Not answered yet: Kidney disease."), texts(wait.reasons()));
    }

    /** Levels: NHS, NICE, BACR, spinal pathways and others, one source a rule in RedFlagRule. */
    @ParameterizedTest
    @EnumSource(RedFlag.class)
    void a_red_flag_acts_at_its_level(RedFlag flag) {
        Readiness found = readiness(flagged(flag, YES));

        switch (RedFlagRule.of(flag).urgency()) {
            case EMERGENCY ->
                assertEquals(
                        Urgency.EMERGENCY,
                        assertInstanceOf(Readiness.Stop.class, found).urgency());
            case SAME_DAY ->
                assertEquals(
                        Urgency.SAME_DAY,
                        assertInstanceOf(Readiness.Stop.class, found).urgency());
            case ROUTINE -> assertEquals(List.of(RedFlagRule.of(flag).raised()), found.reasons());
        }
    }

    /** Design choice: an emergency question without an answer counts as same day; the others are asked first. */
    @ParameterizedTest
    @EnumSource(RedFlag.class)
    void a_red_flag_that_nobody_answered_is_never_read_as_no(RedFlag flag) {
        Readiness found = readiness(flagged(flag, UNKNOWN));

        assertEquals(List.of(RedFlagRule.of(flag).unanswered()), found.reasons());
        if (flag.code().startsWith("E")) {
            assertEquals(
                    Urgency.SAME_DAY,
                    assertInstanceOf(Readiness.Stop.class, found).urgency());
        } else if (RedFlagRule.of(flag).urgency() == Urgency.SAME_DAY) {
            assertEquals(
                    Who.CLIENT, assertInstanceOf(Readiness.Wait.class, found).who());
        }
    }

    /** Triage examples: E, D and R as published by the sources that each rule names; the highest level wins. */
    @ParameterizedTest
    @CsvSource({
        "chest pressure at rest with sweating,      CHEST_PAIN_NOW,   ,                 EMERGENCY, E1",
        "saddle numbness and cannot pass urine,     SADDLE_NUMBNESS,  ,                 EMERGENCY, E5",
        "calf swollen and now breathless,           ONE_LEG_SWELLING, NEW_BREATHLESSNESS, EMERGENCY, E2+D1",
        "hot swollen knee and 38.5 degrees,         FEVER_WITH_PAIN,  ,                 SAME_DAY,  D2",
        "calf swollen alone,                        ONE_LEG_SWELLING, ,                 SAME_DAY,  D1",
        "night pain and a fall that did harm,       NIGHT_PAIN,       FALL_WITH_INJURY, SAME_DAY,  D6"
    })
    void the_highest_level_wins(String told, RedFlag one, RedFlag other, Urgency urgency, String rule) {
        ReadinessAnswers answers = flagged(one, YES);
        if (other != null) {
            answers = flags(answers, answers.redFlags().with(other, YES));
        }

        Readiness.Stop stop = assertInstanceOf(Readiness.Stop.class, readiness(answers));

        assertEquals(urgency, stop.urgency());
        assertEquals(
                1,
                stop.reasons().stream()
                        .filter(reason -> reason.rule().id().equals(rule))
                        .count());
    }

    /**
     * Screening reference, section 12: the rows that name two signs. E2 with D1 (NHS on clots in a vein), E4 with D7 (ESC
     * syncope 2018), D2 with fast breathing (AHCPR, spinal pathway), D8 when it is felt (ESC/ESH).
     */
    @ParameterizedTest
    @CsvSource({
        "ONE_LEG_SWELLING,   BREATHLESS_AT_REST, NO,  EMERGENCY, E2+D1",
        "ONE_LEG_SWELLING,   BREATHLESS_LYING,   NO,  EMERGENCY, E2+D1",
        "ONE_LEG_SWELLING,   CHEST_DISCOMFORT,   NO,  EMERGENCY, E2+D1",
        "ONE_LEG_SWELLING,   UNUSUAL_TIREDNESS,  NO,  EMERGENCY, E2+D1",
        "ONE_LEG_SWELLING,   ANKLE_SWELLING,     NO,  SAME_DAY,  D1",
        "NEW_BREATHLESSNESS, CHEST_DISCOMFORT,   NO,  EMERGENCY, E2+D5",
        "NEW_BREATHLESSNESS, ANKLE_SWELLING,     NO,  SAME_DAY,  D5",
        "CHANGED_ANGINA,     BREATHLESS_AT_REST, NO,  EMERGENCY, E2+D5",
        "FAINTED,            CHEST_DISCOMFORT,   NO,  EMERGENCY, E4+D7",
        "FAINTED,            PALPITATIONS,       NO,  SAME_DAY,  D7",
        "FEVER_WITH_PAIN,    BREATHLESS_AT_REST, NO,  EMERGENCY, E11+D2",
        "FEVER_WITH_PAIN,    PALPITATIONS,       NO,  SAME_DAY,  D2",
        "VERY_HIGH_PRESSURE, ,                   YES, EMERGENCY, D8+felt",
        "VERY_HIGH_PRESSURE, ,                   UNKNOWN, EMERGENCY, D8+felt",
        "VERY_HIGH_PRESSURE, CHEST_DISCOMFORT,   NO,  EMERGENCY, D8+felt",
        "VERY_HIGH_PRESSURE, PALPITATIONS,       NO,  SAME_DAY,  D8"
    })
    void two_signs_together_may_mean_more_than_each(
            RedFlag flag, Symptom sign, Answer felt, Urgency urgency, String rule) {
        Answers<Symptom> signs = sign == null ? Answers.onlyYes(Symptom.class) : Answers.onlyYes(Symptom.class, sign);
        ReadinessAnswers answers =
                new ReadinessAnswers(NO, none(), signs, Answers.onlyYes(RedFlag.class, flag), NO, NO, NO, NO);

        Readiness.Stop stop = assertInstanceOf(Readiness.Stop.class, Readiness.of(answers, felt, TODAY));

        assertEquals(urgency, stop.urgency());
        assertEquals(rule, stop.reasons().getFirst().rule().id());
    }

    /** Screening reference, section 12: D2 is an emergency when confused, mottled or breathing fast. */
    @Test
    void fever_with_confusion_is_an_emergency_question_of_its_own() {
        assertEquals(
                Urgency.EMERGENCY,
                assertInstanceOf(Readiness.Stop.class, readiness(flagged(RedFlag.FEVER_AND_CONFUSED, YES)))
                        .urgency());
    }

    /** Riebe et al. 2015: a clearance counts when it was given within the last 12 months. */
    @ParameterizedTest
    @CsvSource({"2025-03-03, true", "2025-03-02, false", "2026-03-01, true", ", true"})
    void a_clearance_counts_for_twelve_months(LocalDate on, boolean counts) {
        Readiness found = readiness(clearedOn(on, NO, NO));

        if (counts) {
            assertEquals(
                    Row.A2,
                    assertInstanceOf(Readiness.ClearWithLimits.class, found).row());
        } else {
            assertEquals(
                    List.of(
                            "Diabetes, type 1 or 2, and not used to exercise.",
                            "The clearance of 2 March 2025 is older than 12 months."),
                    texts(assertInstanceOf(Readiness.Wait.class, found).reasons()));
        }
    }

    /** Riebe et al. 2015, B2v: cleared within the last 12 months, then vigorous. */
    @ParameterizedTest
    @CsvSource({"2025-03-03, MODERATE_OR_VIGOROUS", "2025-03-02, MODERATE"})
    void vigorous_work_with_a_known_disease_rests_on_a_clearance_of_this_year(LocalDate on, Intensity intensity) {
        Readiness found = readiness(clearedOn(on, YES, YES));

        assertEquals(Row.B2V, found.row());
        assertEquals(
                intensity,
                found instanceof Readiness.Clear clear
                        ? clear.intensity()
                        : assertInstanceOf(Readiness.ClearWithLimits.class, found)
                                .intensity());
    }

    /** BACR 2006 and Australian heart-failure guidance: illnesses that are not settled hold everything. */
    @ParameterizedTest
    @CsvSource({
        "RECENT_CLOT_OR_HEART_ATTACK, ROUTINE",
        "RHYTHM_NOT_SETTLED,          SAME_DAY",
        "HEART_NOT_SETTLED,           SAME_DAY",
        "VALVE_OR_INFLAMMATION,       ROUTINE",
        "DIABETES_NOT_SETTLED,        ROUTINE"
    })
    void nothing_begins_while_an_illness_is_not_settled(RedFlag flag, Urgency urgency) {
        Readiness found = readiness(flagged(flag, YES));

        if (urgency == Urgency.SAME_DAY) {
            assertEquals(urgency, assertInstanceOf(Readiness.Stop.class, found).urgency());
        } else {
            assertEquals(
                    Who.CLINICIAN, assertInstanceOf(Readiness.Wait.class, found).who());
        }
    }

    @Test
    void nothing_asked_is_never_a_yes_to_exercise() {
        assertInstanceOf(Readiness.Stop.class, readiness(ReadinessAnswers.notAsked()));
    }

    private static Readiness readiness(ReadinessAnswers answers) {
        return Readiness.of(answers, NO, TODAY);
    }

    private static Answers<Disease> none() {
        return Answers.onlyYes(Disease.class);
    }

    private static ReadinessAnswers answers(
            Answer active, Answer vigorous, Answers<Disease> diseases, Answers<Symptom> symptoms) {
        return new ReadinessAnswers(active, diseases, symptoms, Answers.onlyYes(RedFlag.class), vigorous, NO, NO, NO);
    }

    private static ReadinessAnswers clearedOn(LocalDate on, Answer active, Answer vigorous) {
        return new ReadinessAnswers(
                active,
                Answers.onlyYes(Disease.class, Disease.DIABETES),
                Answers.onlyYes(Symptom.class),
                Answers.onlyYes(RedFlag.class),
                vigorous,
                YES,
                NO,
                NO,
                Answers.notAsked(),
                NO,
                on);
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
