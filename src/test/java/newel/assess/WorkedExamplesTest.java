package newel.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import newel.client.Done;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Part;
import newel.client.Quantity;
import newel.client.Sex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Examples worked out by hand, table by table, beside the source of each table. */
class WorkedExamplesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
    private static final Assessing ASSESSING = new Assessing(Guides.shipped());

    /** CDC 2017, STEADI Assessment: 30-Second Chair Stand. Score under the cut-off is below average; arms used is 0. */
    @ParameterizedTest(name = "{0}: age {1} {2}, {3} stands, arms used {4}")
    @CsvSource({
        "1, 62, MALE,   14, false, 14, 14, NOT_BELOW",
        "3, 67, FEMALE, 11, false, 11, 11, NOT_BELOW",
        "5, 78, MALE,   11, false, 11, 11, NOT_BELOW",
        "7, 87, MALE,    7, false,  7,  8, BELOW_AVERAGE",
        "9, 76, FEMALE,  6, true,   0, 10, BELOW_AVERAGE"
    })
    void thirty_second_chair_stand_against_the_floor_of_the_average(
            int row, int age, Sex sex, int stands, boolean arms, String score, String cut, String code) {
        Result result = ASSESSING.of(new Measured(Measure.CHAIR_STAND_30S, stands, DAY, arms), age, sex);

        Verdict.Judged verdict = (Verdict.Judged) verdict(result, "steadi-chair-stand");
        assertEquals(
                List.of(score, cut, code),
                List.of(
                        result.score().number(),
                        verdict.row().worse().toPlainString(),
                        verdict.says().code()));
    }

    /** Rikli and Jones 1999, J Aging Phys Act 7:162-181. The limits count as within. */
    @ParameterizedTest(name = "{0}: {1} {2} {3}, {4}")
    @CsvSource({
        "1, ARM_CURL_30S,    FEMALE, 66, 11,  12,   18,   BELOW",
        "3, CHAIR_STAND_30S, FEMALE, 71, 16,  10,   15,   ABOVE",
        "5, STEP_2MIN,       FEMALE, 77, 100, 68,   100,  WITHIN",
        "7, BACK_SCRATCH,    FEMALE, 64, 2.0, -3.0, 1.5,  ABOVE",
        "9, UP_AND_GO_8FT,   MALE,   65, 4.2, 5.9,  4.3,  ABOVE"
    })
    void fitness_tests_against_the_middle_half_of_an_age_and_sex(
            int row, Measure measure, Sex sex, int age, BigDecimal value, BigDecimal from, BigDecimal to, String code) {
        Result result = ASSESSING.of(measured(measure, value), age, sex);

        Verdict.Placed verdict = (Verdict.Placed) result.headline().orElseThrow();
        assertEquals(
                List.of(from.stripTrailingZeros(), to.stripTrailingZeros(), code),
                List.of(
                        verdict.row().worse().stripTrailingZeros(),
                        verdict.row().better().stripTrailingZeros(),
                        verdict.says().code()));
    }

    /** CDC STEADI 2017; Montero-Odasso et al. 2022; Cruz-Jentoft et al. 2019; Bohannon 2006: a cut-off each. */
    @ParameterizedTest(name = "{0}: age {1}, {2} s")
    @CsvSource({
        "1, 66, 8.5,  STEADI_OK,   WFG_OK,       EWGSOP2_OK,  AVERAGE_OR_BETTER",
        "3, 72, 11.9, STEADI_OK,   WFG_OK,       EWGSOP2_OK,  WORSE_THAN_AVERAGE",
        "5, 79, 10.2, STEADI_OK,   WFG_OK,       EWGSOP2_OK,  AVERAGE_OR_BETTER",
        "7, 85, 15.0, STEADI_RISK, WFG_OK,       EWGSOP2_OK,  WORSE_THAN_AVERAGE",
        "9, 91, 20.0, STEADI_RISK, WFG_IMPAIRED, EWGSOP2_LOW, WORSE_THAN_AVERAGE"
    })
    void up_and_go_against_each_source_by_its_own_cut_off(
            int row, int age, BigDecimal seconds, String steadi, String wfg, String ewgsop2, String bohannon) {
        Result result = ASSESSING.of(measured(Measure.UP_AND_GO_3M, seconds), age, Sex.FEMALE);

        assertEquals(
                List.of(steadi, wfg, ewgsop2, bohannon),
                codes(result, "steadi-up-and-go", "wfg-up-and-go", "ewgsop2-up-and-go", "bohannon-up-and-go"));
    }

    /** CDC 2017, STEADI Assessment: 4-Stage Balance Test. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"1, 10 10 10 10,  4, OK", "3, 10 10 9.9 -,  2, RISK", "5, 8 - - -,      0, RISK"})
    void four_stages_are_a_risk_when_heel_to_toe_is_not_held(int row, String seconds, String reached, String code) {
        Measured measured = Guides.shipped()
                .inParts(
                        Measure.FOUR_STAGE_BALANCE,
                        parts(seconds, FourStages.STANCES.toArray(Part[]::new)),
                        DAY,
                        Done.AS_TOLD);

        Result result = ASSESSING.of(measured, 74, Sex.FEMALE);

        assertEquals(reached, result.score().number());
        assertEquals(List.of(code), codes(result, "steadi-four-stage"));
    }

    /** Row 7: Dite and Temple 2002, Arch Phys Med Rehabil 83:1566-1571. */
    @ParameterizedTest
    @CsvSource({"15.1, 74, RISK"})
    void four_square_step(BigDecimal seconds, int age, String code) {
        assertEquals(
                List.of(code),
                codes(ASSESSING.of(measured(Measure.FOUR_SQUARE_STEP, seconds), age, Sex.MALE), "dite-four-square"));
    }

    /** Row 9: Springer et al. 2007, J Geriatr Phys Ther 30:8-15; no difference between women and men over all. */
    @ParameterizedTest
    @CsvSource({"67, 12.0, FEMALE, 26.9, BELOW_MEAN", "67, 12.0, MALE, 26.9, BELOW_MEAN"})
    void one_leg_against_the_mean_of_three(int age, BigDecimal seconds, Sex sex, String mean, String code) {
        Result result = ASSESSING.of(measured(Measure.SINGLE_LEG_STANCE, seconds), age, sex);

        Verdict.Judged verdict = (Verdict.Judged) verdict(result, "springer-open-mean");
        assertEquals(
                List.of(mean, code),
                List.of(verdict.row().worse().toPlainString(), verdict.says().code()));
    }

    /** Guralnik et al. 1994 and 2000; low at 8 or under by Cruz-Jentoft et al. 2019. Side, half, tandem, walk, stands. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "1, 10 10 10 4.0 10.5,    4/4/4, 12, EWGSOP2_OK",
        "3, 10 10 2.5 6.21 13.7,  2/2/2, 6,  LOW",
        "5, 7 - - - -,            0/0/0, 0,  LOW",
        "7, 10 10 10 4.81 11.19,  4/4/4, 12, EWGSOP2_OK",
        "9, 10 10 10 5.5 61,      4/3/0, 7,  LOW"
    })
    void short_battery_over_four_metres(int row, String seconds, String scores, String total, String code) {
        Map<Part, BigDecimal> parts =
                parts(seconds, Part.SIDE_BY_SIDE, Part.SEMI_TANDEM, Part.TANDEM, Part.WALK, Part.STANDS);
        parts.put(Part.COURSE, BigDecimal.valueOf(4));

        Sppb sppb = Guides.shipped().sppb(parts);
        Result result = ASSESSING.of(Guides.shipped().inParts(Measure.SPPB, parts, DAY, Done.AS_TOLD), 74, Sex.FEMALE);

        assertEquals(scores, sppb.balance() + "/" + sppb.walk() + "/" + sppb.stands());
        assertEquals(total, result.score().number());
        assertEquals(List.of(code), codes(result, "ewgsop2-sppb"));
    }

    /** Cruz-Jentoft et al. 2019, Age Ageing 48:16-31 (EWGSOP2). */
    @ParameterizedTest(name = "{0}: {1}, grip {2}, stands {3}, walk {4}")
    @CsvSource({
        "1, MALE,   27, 12,   1.1,  NO_LOW_STRENGTH",
        "3, FEMALE, 16, 15,   0.9,  NO_LOW_STRENGTH",
        "5, FEMALE, 18, 15.1, 0.81, PROBABLE_SARCOPENIA",
        "7, FEMALE, 20, -,    0.8,  NO_LOW_STRENGTH; LOW_PERFORMANCE",
        "9, FEMALE, -,  -,    0.7,  INSUFFICIENT_DATA"
    })
    void strength_and_walk_together(int row, Sex sex, String grip, String stands, String walk, String code) {
        LowStrength strength = LowStrength.of(
                result(Measure.GRIP, grip, sex),
                result(Measure.CHAIR_STAND_5X, stands, sex),
                result(Measure.GAIT_SPEED, walk, sex));

        assertEquals(code, strength.code());
    }

    private static Optional<Result> result(Measure measure, String value, Sex sex) {
        return value.equals("-")
                ? Optional.empty()
                : Optional.of(ASSESSING.of(measured(measure, new BigDecimal(value)), 74, sex));
    }

    private static Measured measured(Measure measure, BigDecimal value) {
        return new Measured(measure, new Quantity(value, measure.unit()), DAY, Done.AS_TOLD);
    }

    private static Map<Part, BigDecimal> parts(String seconds, Part... order) {
        Map<Part, BigDecimal> parts = new EnumMap<>(Part.class);
        String[] each = seconds.split(" ");
        for (int i = 0; i < order.length; i++) {
            if (!each[i].equals("-")) {
                parts.put(order[i], new BigDecimal(each[i]));
            }
        }
        return parts;
    }

    private static Verdict verdict(Result result, String rule) {
        return result.verdicts().stream()
                .filter(each -> each.rule().id().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> codes(Result result, String... rules) {
        return List.of(rules).stream()
                .map(rule -> verdict(result, rule).says().code())
                .collect(Collectors.toList());
    }
}
