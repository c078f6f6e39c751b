package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.math.BigDecimal;
import java.util.List;
import newel.People;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.PulseGuard;
import newel.client.ReadinessAnswers;
import newel.client.Vitals;
import newel.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Bands: Garber et al. 2011. Pulse: Karvonen et al. 1957, Tanaka et al. 2001. Screening reference 13.13 and 13.14. */
class EffortTest {
    @ParameterizedTest
    @CsvSource({
        // highest, rest, from %, to %: handbook box (from memory), then Tanaka at 70 and 80
        "180,   70, 50, 60, 125, 136",
        "159.0, 72, 40, 59, 107, 123",
        "152.0, 76, 30, 39, 99,  106"
    })
    void a_target_is_rest_and_a_share_of_the_reserve(
            BigDecimal highest, int rest, int low, int high, int from, int to) {
        assertEquals(from, PulseTarget.reserve(highest, rest, low));
        assertEquals(to, PulseTarget.reserve(highest, rest, high));
    }

    /** 13.13 row 7: 64 to 76 % of 155.5. Trap 10: 0.7 x 175 is 122.5 and rounds up to 123, which binary decimals miss. */
    @ParameterizedTest
    @CsvSource({"155.5, 64, 100", "155.5, 76, 118", "175, 70, 123"})
    void a_share_of_the_highest_pulse_rounds_half_up_on_exact_decimals(BigDecimal highest, int percent, int beats) {
        assertEquals(beats, PulseTarget.ofHighest(highest, percent));
    }

    @ParameterizedTest
    @CsvSource({
        "TANAKA,          70, 159.0",
        "TANAKA,          75, 155.5",
        "TANAKA,          80, 152.0",
        "GELLISH,         70, 158.0",
        "GELLISH_FITTED,  70, 160.00",
        "OLD,             70, 150",
        "ON_BETA_BLOCKER, 68, 116.4"
    })
    void each_formula_is_exact(MaxPulse formula, int age, BigDecimal beats) {
        assertEquals(0, beats.compareTo(formula.at(age)), formula.at(age).toPlainString());
    }

    @ParameterizedTest
    @CsvSource({
        "8, VERY_LIGHT",
        "9, LIGHT",
        "11, LIGHT",
        "12, MODERATE",
        "13, MODERATE",
        "14, VIGOROUS",
        "17, VIGOROUS",
        "18, NEAR_LIMIT"
    })
    void the_scale_from_6_to_20_has_its_bands(int rating, Effort band) {
        assertEquals(band, Effort.ofRpe(rating));
    }

    /** Trap 5: the same number means different things on the ratio scale and on the scale of effort. */
    @ParameterizedTest
    @CsvSource({
        "1.9, VERY_LIGHT",
        "2, LIGHT",
        "3, MODERATE",
        "4.9, MODERATE",
        "5, VIGOROUS",
        "7.9, VIGOROUS",
        "8, NEAR_LIMIT"
    })
    void the_ratio_scale_has_its_bands(BigDecimal rating, Effort band) {
        assertEquals(band, Effort.ofCr10(rating));
    }

    @ParameterizedTest
    @CsvSource({
        "2, VERY_LIGHT",
        "3, LIGHT",
        "4, LIGHT",
        "5, MODERATE",
        "6, MODERATE",
        "7, VIGOROUS",
        "8, VIGOROUS",
        "9, NEAR_LIMIT"
    })
    void the_scale_of_effort_has_its_bands(int rating, Effort band) {
        assertEquals(band, Effort.ofScale(rating));
    }

    @ParameterizedTest
    @CsvSource({
        "29.9, VERY_LIGHT",
        "30, LIGHT",
        "39.9, LIGHT",
        "40, MODERATE",
        "59.9, MODERATE",
        "60, VIGOROUS",
        "89.9, VIGOROUS",
        "90, NEAR_LIMIT"
    })
    void the_pulse_reserve_has_its_bands(BigDecimal percent, Effort band) {
        assertEquals(band, Effort.ofReserve(percent));
    }

    @ParameterizedTest
    @CsvSource({"SINGS, LIGHT", "TALKS_NOT_SINGS, MODERATE", "FEW_WORDS, VIGOROUS", "NO_TALK, NEAR_LIMIT"})
    void talk_tells_the_band(Effort.Talk talk, Effort band) {
        assertEquals(band, Effort.ofTalk(talk));
    }

    @Test
    void with_every_guard_away_the_target_is_shown() {
        assertEquals(
                // 72 + 0.30 x 87 = 98.1; 72 + 0.59 x 87 = 123.33
                new PulseTarget.Shown(98, 123, PulseTarget.RESERVE),
                PulseTarget.of(person(Answer.NO, guards(), 72), 70, Effort.LIGHT, Effort.MODERATE));
    }

    /** 13.13 row 9: no target on a beta-blocker. */
    @Test
    void medicine_that_slows_the_pulse_keeps_the_target_away() {
        assertEquals(
                List.of("Medicine that slows the pulse."),
                reasons(PulseTarget.of(person(Answer.YES, guards(), 72), 68, Effort.LIGHT, Effort.MODERATE)));
        assertEquals(
                List.of("Not answered yet: Medicine that slows the pulse."),
                reasons(PulseTarget.of(person(Answer.UNKNOWN, guards(), 72), 68, Effort.LIGHT, Effort.MODERATE)));
    }

    @ParameterizedTest
    @EnumSource(PulseGuard.class)
    void each_guard_keeps_the_target_away_and_so_does_not_asking(PulseGuard guard) {
        assertEquals(
                List.of(guard.words() + "."),
                reasons(PulseTarget.of(person(Answer.NO, guards(guard), 72), 70, Effort.LIGHT, Effort.MODERATE)));
        assertEquals(
                List.of("Not answered yet: " + guard.words() + "."),
                reasons(PulseTarget.of(
                        person(Answer.NO, guards().with(guard, Answer.UNKNOWN), 72),
                        70,
                        Effort.LIGHT,
                        Effort.MODERATE)));
    }

    @Test
    void without_a_resting_pulse_there_is_no_target() {
        assertEquals(
                List.of("The resting pulse was not measured."),
                reasons(PulseTarget.of(person(Answer.NO, guards(), null), 70, Effort.LIGHT, Effort.MODERATE)));
    }

    private static Answers<PulseGuard> guards(PulseGuard... yes) {
        return Answers.onlyYes(PulseGuard.class, yes);
    }

    private static List<String> reasons(PulseTarget target) {
        return assertInstanceOf(PulseTarget.NotShown.class, target).reasons().stream()
                .map(Finding::text)
                .toList();
    }

    private static Client person(Answer medicine, Answers<PulseGuard> guards, Integer pulse) {
        Client c = People.fitAndBored();
        ReadinessAnswers r = c.readiness();
        ReadinessAnswers answers = new ReadinessAnswers(
                r.regularExercise(),
                r.knownDisease(),
                r.symptoms(),
                r.redFlags(),
                r.wantsVigorous(),
                r.clearedWithinYear(),
                r.symptomsCleared(),
                medicine,
                guards,
                Answer.NO,
                null);
        Vitals vitals = new Vitals(120, 70, pulse, null, null, null, null, Answer.NO);
        return new Client(
                c.id(), c.profile(), c.home(), c.wishes(), answers, c.falls(), vitals, c.measures(), List.of());
    }
}
