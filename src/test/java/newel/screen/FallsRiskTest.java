package newel.screen;

import static newel.client.Answer.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.FallsAnswers;
import newel.client.FallsItem;
import newel.client.Measure;
import newel.client.Measured;
import newel.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FallsRiskTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    /** Montero-Odasso et al. 2022, Age Ageing 51:afac205; walking speed decides, up-and-go only where it is missing. */
    @ParameterizedTest
    @CsvSource({
        // falls, injured, frail, could not rise, lost consciousness, m/s, s, level
        "0, NO,  NO,  NO,  NO,  0.7, 18,   LOW",
        "1, NO,  NO,  NO,  NO,  0.8, ,     INTERMEDIATE",
        "1, NO,  NO,  NO,  NO,  ,    15.0, LOW",
        "1, YES, NO,  NO,  NO,  1.2, ,     HIGH",
        "1, NO,  NO,  NO,  YES, 1.3, 9,    HIGH",
        // The other arms of the same path.
        "1, NO,  NO,  NO,  NO,  0.81, 18,  LOW",
        "1, NO,  NO,  NO,  NO,  ,    15.1, INTERMEDIATE",
        "2, NO,  NO,  NO,  NO,  1.2, ,     HIGH",
        "1, NO,  YES, NO,  NO,  1.2, ,     HIGH",
        "1, NO,  NO,  YES, NO,  1.2, ,     HIGH",
        // Design choices: what nobody measured or answered is not taken as good.
        "1, NO,  NO,  NO,  NO,  ,    ,     INTERMEDIATE",
        "1, NO,  NO,  UNKNOWN, NO, 1.2, ,  NOT_KNOWN",
        " , NO,  NO,  NO,  NO,  1.2, ,     NOT_KNOWN",
        " , YES, NO,  NO,  NO,  1.2, ,     HIGH"
    })
    void the_path_ends_where_the_guideline_ends_it(
            Integer falls,
            Answer injured,
            Answer frail,
            Answer unableToRise,
            Answer lostConsciousness,
            Double speed,
            Double upAndGo,
            FallsLevel level) {
        FallsAnswers answers = new FallsAnswers(falls, injured, unableToRise, lostConsciousness, frail, NO, NO);

        FallsRisk risk = FallsRisk.of(
                answers,
                measured(Measure.GAIT_SPEED, speed),
                measured(Measure.UP_AND_GO_3M, upAndGo),
                FallsSet.AS_PUBLISHED);

        assertEquals(level, risk.level());
    }

    /** CDC STEADI: any yes to the three key questions is at risk. */
    @ParameterizedTest
    @CsvSource({"0, NO, NO, false", "0, YES, NO, true", "0, NO, YES, true", "1, NO, NO, true", "0, UNKNOWN, NO, true"})
    void any_key_question_puts_at_risk(Integer falls, Answer unsteady, Answer worried, boolean atRisk) {
        FallsRisk risk = FallsRisk.of(
                new FallsAnswers(falls, NO, NO, NO, NO, unsteady, worried), null, null, FallsSet.AS_PUBLISHED);

        assertEquals(atRisk, risk.atRisk());
    }

    /**
     * Age Ageing 2024, afae192: up-and-go over 10 s, asked of everybody who is not at high risk. That a slow walk still counts,
     * and that what was not measured is not taken as good, are design choices.
     */
    @ParameterizedTest
    @CsvSource({
        "0, NO,  1.2, 10.0, LOW",
        "0, NO,  1.2, 10.1, INTERMEDIATE",
        "0, NO,  ,    10.1, INTERMEDIATE",
        "0, NO,  1.2, ,     INTERMEDIATE",
        "0, NO,  0.8, 9.0,  INTERMEDIATE",
        "1, NO,  1.2, 10.0, LOW",
        "1, NO,  1.2, 12.0, INTERMEDIATE",
        "1, YES, 1.2, 9.0,  HIGH",
        "2, NO,  1.2, 9.0,  HIGH"
    })
    void the_published_variant_asks_everybody_to_get_up_and_go(
            int falls, Answer injured, Double speed, Double upAndGo, FallsLevel level) {
        FallsRisk risk = FallsRisk.of(
                new FallsAnswers(falls, injured, NO, NO, NO, NO, NO),
                measured(Measure.GAIT_SPEED, speed),
                measured(Measure.UP_AND_GO_3M, upAndGo),
                FallsSet.WIDER);

        assertEquals(level, risk.level());
    }

    /** Screening reference 13.8: CDC STEADI, Rubenstein et al. 2011; items 1 and 2 count 2, at risk from 4 of 14. */
    @ParameterizedTest
    @CsvSource({
        "'1 2',                           4,  YES",
        "'2 3',                           3,  NO",
        "'1 2 3 4 5 6 7 8 9 10 11 12',    14, YES",
        // The line itself, on both sides, without the heavy items.
        "'3 4 5',                         3,  NO",
        "'3 4 5 6',                       4,  YES",
        "'1 12',                          3,  NO",
        "'1 11 12',                       4,  YES",
        "'',                              0,  NO"
    })
    void the_questionnaire_counts_its_first_two_items_twice(String yes, int points, Answer atRisk) {
        FallsScore score = FallsScore.of(Answers.onlyYes(FallsItem.class, items(yes)));

        assertEquals(new FallsScore(points, 0, true), score);
        assertEquals(atRisk, score.atRisk());
    }

    @Test
    void open_items_that_could_reach_the_line_keep_the_questionnaire_open() {
        Answers<FallsItem> three = Answers.onlyYes(FallsItem.class, items("1 3"));

        assertEquals(NO, FallsScore.of(three).atRisk());
        assertEquals(
                UNKNOWN, FallsScore.of(three.with(FallsItem.LOW_MOOD, UNKNOWN)).atRisk());
        assertEquals(
                List.of("Falls questionnaire: 3 points so far; the open items could reach 4."),
                FallsScore.of(three.with(FallsItem.LOW_MOOD, UNKNOWN)).findings().stream()
                        .map(Finding::text)
                        .toList());
        assertEquals(List.of(), FallsScore.of(Answers.notAsked()).findings());
    }

    @Test
    void a_questionnaire_at_risk_asks_for_a_hand_although_the_path_says_low() {
        FallsAnswers answers =
                new FallsAnswers(0, NO, NO, NO, NO, NO, NO).withItems(Answers.onlyYes(FallsItem.class, items("2 6 7")));

        FallsRisk risk = FallsRisk.of(answers, null, null, FallsSet.AS_PUBLISHED);

        assertEquals(FallsLevel.LOW, risk.level());
        assertEquals(true, risk.atRisk());
    }

    /** Montero-Odasso et al. 2022: 12 months, and 30 to 90 days for high (from memory); tests after CDC STEADI. */
    @ParameterizedTest
    @CsvSource({
        "LOW,          false, 0, false, in 12 months",
        "LOW,          true,  3, false, in 30 to 90 days",
        "INTERMEDIATE, true,  3, false, in 12 months",
        "HIGH,         true,  3, true,  in 30 to 90 days",
        "NOT_KNOWN,    true,  3, false, as soon as they are answered"
    })
    void each_level_says_what_to_measure_whom_to_ask_and_when_to_look_again(
            FallsLevel level, boolean atRisk, int measures, boolean refer, String again) {
        List<Finding> key = atRisk ? List.of(new Finding(FallsScore.RULE, "Feels unsteady.")) : List.of();

        FallsPlan plan = FallsPlan.of(new FallsRisk(level, List.of(), key), Set.of(Measure.GAIT_SPEED));

        assertEquals(measures, plan.measure().size());
        assertEquals(refer, plan.refer());
        assertEquals(again, plan.lookAgain());
    }

    private static FallsItem[] items(String numbers) {
        return numbers.isEmpty()
                ? new FallsItem[0]
                : Arrays.stream(numbers.split(" "))
                        .map(number -> FallsItem.values()[Integer.parseInt(number) - 1])
                        .toArray(FallsItem[]::new);
    }

    @Test
    void every_severe_answer_is_named() {
        FallsRisk risk = FallsRisk.of(new FallsAnswers(3, YES, NO, NO, YES, NO, NO), null, null, FallsSet.AS_PUBLISHED);

        assertEquals(
                List.of("3 falls in the past 12 months.", "A fall that needed care.", "Frail, and has fallen."),
                risk.reasons().stream().map(Finding::text).toList());
    }

    @Test
    void answers_that_only_a_fall_explains_stand_beside_a_denied_fall() {
        FallsRisk risk = FallsRisk.of(new FallsAnswers(0, NO, NO, YES, NO, NO, NO), null, null, FallsSet.AS_PUBLISHED);

        assertEquals(FallsLevel.LOW, risk.level());
        assertEquals(
                List.of("Says no fall, but lost consciousness."),
                risk.keyQuestions().stream().map(Finding::text).toList());
    }

    private static Measured measured(Measure measure, Double value) {
        return value == null ? null : new Measured(measure, value, DAY);
    }
}
