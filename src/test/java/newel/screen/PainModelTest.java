package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.math.BigDecimal;
import newel.client.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Screening reference section 10 and 13.17: Thomee 1997, Silbernagel et al. 2007; the order of the tests is a design choice. */
class PainModelTest {
    private static final PainModel LOWER = new PainModel(PainZones.LOWER);

    @ParameterizedTest
    @CsvSource({
        // during, after, morning, usual, week rises, alarming, outcome
        "0,   0,   1, 1, NO,  NO,  Progress",
        "3,   3,   1, 1, NO,  NO,  Keep",
        "5.5, 4,   1, 1, NO,  NO,  Reduce",
        "4,   3,   3, 1, NO,  NO,  Reduce",
        "2,   1,   1, 1, NO,  YES, StopAndRefer",
        // Both sides of each line.
        "2,   2,   1, 1, NO,  NO,  Progress",
        "2.1, 2,   1, 1, NO,  NO,  Keep",
        "5,   5,   1, 1, NO,  NO,  Keep",
        "4,   5.1, 1, 1, NO,  NO,  Reduce",
        "1,   1,   1.9, 1, NO, NO, Progress",
        "1,   1,   2, 1, NO,  NO,  Reduce",
        "1,   1,   1, 1, YES, NO,  Reduce",
        "1,   1,   1, 1, UNKNOWN, NO, Reduce",
        "1,   1,   1, 1, NO,  UNKNOWN, StopAndRefer",
        "1,   1,   ,  1, NO,  NO,  AskNextMorning",
        "6,   1,   ,  1, NO,  NO,  Reduce"
    })
    void pain_during_after_and_next_morning_decide(
            BigDecimal during,
            BigDecimal after,
            BigDecimal morning,
            BigDecimal usual,
            Answer week,
            Answer alarming,
            String outcome) {
        PainLog log = new PainLog(PainKind.JOINT_OR_TENDON, during, after, morning, usual, week, Answer.NO, alarming);

        assertEquals(outcome, LOWER.judge(log, null).getClass().getSimpleName());
    }

    /** The other published zones: up to 3 is safe. */
    @ParameterizedTest
    @CsvSource({"3, Progress", "3.1, Keep", "5, Keep", "5.1, Reduce"})
    void a_practice_may_set_the_safe_zone_to_three(BigDecimal during, String outcome) {
        assertEquals(
                outcome,
                new PainModel(PainZones.HIGHER)
                        .judge(log(PainKind.JOINT_OR_TENDON, during, BigDecimal.ONE), null)
                        .getClass()
                        .getSimpleName());
    }

    @Test
    void two_mornings_running_that_are_not_settled_let_somebody_look() {
        PainLog worse = log(PainKind.JOINT_OR_TENDON, BigDecimal.ONE, new BigDecimal("2"));
        PainLog settled = log(PainKind.JOINT_OR_TENDON, BigDecimal.ONE, BigDecimal.ONE);

        assertInstanceOf(PainOutcome.Reduce.class, LOWER.judge(worse, null));
        assertInstanceOf(PainOutcome.Reduce.class, LOWER.judge(worse, settled));
        assertInstanceOf(PainOutcome.StopAndRefer.class, LOWER.judge(worse, worse));
    }

    @Test
    void more_than_five_at_rest_lets_somebody_look() {
        PainLog resting = new PainLog(
                PainKind.JOINT_OR_TENDON,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                Answer.NO,
                Answer.YES,
                Answer.NO);

        assertInstanceOf(PainOutcome.StopAndRefer.class, LOWER.judge(resting, null));
    }

    /** The model is never used for what it was not made for, however little it hurts. */
    @ParameterizedTest
    @CsvSource({
        "CHEST,            EMERGENCY",
        "CALF,             SAME_DAY",
        "SPINE_WITH_NERVE, EMERGENCY",
        "PERHAPS_BROKEN,   EMERGENCY",
        "SPINE_PERHAPS_BROKEN, SAME_DAY",
        "BONE_WITH_CANCER, ROUTINE"
    })
    void other_pains_are_treated_as_the_sign_they_may_be(PainKind kind, Urgency urgency) {
        PainOutcome found = LOWER.judge(log(kind, BigDecimal.ZERO, BigDecimal.ONE), null);

        assertEquals(
                urgency,
                assertInstanceOf(PainOutcome.NotForThisModel.class, found).urgency());
    }

    private static PainLog log(PainKind kind, BigDecimal during, BigDecimal morning) {
        return new PainLog(kind, during, BigDecimal.ZERO, morning, BigDecimal.ONE, Answer.NO, Answer.NO, Answer.NO);
    }
}
