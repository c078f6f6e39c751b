package newel.screen;

import static newel.client.Answer.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import newel.client.Answer;
import newel.client.FallsAnswers;
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

        FallsRisk risk =
                FallsRisk.of(answers, measured(Measure.GAIT_SPEED, speed), measured(Measure.UP_AND_GO_3M, upAndGo));

        assertEquals(level, risk.level());
    }

    /** CDC STEADI: any yes to the three key questions is at risk. */
    @ParameterizedTest
    @CsvSource({"0, NO, NO, false", "0, YES, NO, true", "0, NO, YES, true", "1, NO, NO, true", "0, UNKNOWN, NO, true"})
    void any_key_question_puts_at_risk(Integer falls, Answer unsteady, Answer worried, boolean atRisk) {
        FallsRisk risk = FallsRisk.of(new FallsAnswers(falls, NO, NO, NO, NO, unsteady, worried), null, null);

        assertEquals(atRisk, risk.atRisk());
    }

    @Test
    void every_severe_answer_is_named() {
        FallsRisk risk = FallsRisk.of(new FallsAnswers(3, YES, NO, NO, YES, NO, NO), null, null);

        assertEquals(
                List.of("3 falls in the past 12 months.", "A fall that needed care.", "Frail, and has fallen."),
                risk.reasons().stream().map(Finding::text).toList());
    }

    @Test
    void answers_that_only_a_fall_explains_stand_beside_a_denied_fall() {
        FallsRisk risk = FallsRisk.of(new FallsAnswers(0, NO, NO, YES, NO, NO, NO), null, null);

        assertEquals(FallsLevel.LOW, risk.level());
        assertEquals(
                List.of("Says no fall, but lost consciousness."),
                risk.keyQuestions().stream().map(Finding::text).toList());
    }

    private static Measured measured(Measure measure, Double value) {
        return value == null ? null : new Measured(measure, value, DAY);
    }
}
