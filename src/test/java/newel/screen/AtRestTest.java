package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import newel.client.Answer;
import newel.client.Vitals;
import newel.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The strict set: BACR 2006 for pressure, pulse and fever; Freeman et al. 2011 for the fall on standing; Australian
 * heart-failure guidance for weight; oxygen under 90 is a design choice.
 */
class AtRestTest {
    @ParameterizedTest
    @CsvSource({
        // systolic, diastolic, pulse, oxygen, temperature, drop, symptoms, gain, outcome, rule
        "128, 78, 72,  97, 36.6, ,   NO,  ,    Go,        ",
        "179, 99, 80,  96, 36.6, ,   NO,  ,    LightOnly, PRESSURE-RESISTANCE",
        "159, 89, 100, 95, 36.9, ,   NO,  ,    Go,        ",
        "135, 82, 84,  89, 36.9, ,   NO,  ,    Hold,      SPO2",
        "126, 74, 78,  96, 36.5, 24, YES, ,    Hold,      POSTURAL",
        // The lines themselves, one on each side: BACR 2006.
        "180, 70, 72,  97, 36.6, ,   NO,  ,    Hold,      D8-REST",
        "179, 70, 72,  97, 36.6, ,   NO,  ,    LightOnly, PRESSURE-RESISTANCE",
        "128, 99, 72,  97, 36.6, ,   NO,  ,    LightOnly, PRESSURE_RAISED",
        "128, 100, 72, 97, 36.6, ,   NO,  ,    Hold,      REST-INSTRUCTORS-PRESSURE",
        "159, 70, 72,  97, 36.6, ,   NO,  ,    Go,        ",
        "160, 70, 72,  97, 36.6, ,   NO,  ,    LightOnly, PRESSURE_RAISED",
        "161, 70, 72,  97, 36.6, ,   NO,  ,    LightOnly, PRESSURE-RESISTANCE",
        "128, 89, 72,  97, 36.6, ,   NO,  ,    Go,        ",
        "128, 90, 72,  97, 36.6, ,   NO,  ,    LightOnly, PRESSURE_RAISED",
        "128, 78, 101, 97, 36.6, ,   NO,  ,    Hold,      REST-INSTRUCTORS-PULSE",
        "128, 78, 72,  90, 38.0, ,   NO,  ,    Go,        ",
        "128, 78, 72,  97, 38.1, ,   NO,  ,    Hold,      FEVER",
        // Australian heart-failure guidance and ATS 2002: over 120.
        "128, 78, 120, 97, 36.6, ,   NO,  ,    Hold,      REST-INSTRUCTORS-PULSE",
        "128, 78, 121, 97, 36.6, ,   NO,  ,    Hold,      PULSE-120",
        // Freeman et al. 2011: 20 or more, here held only when felt or when nobody knows.
        "128, 78, 72,  97, 36.6, 20, NO,  ,    Go,        ",
        "128, 78, 72,  97, 36.6, 19, YES, ,    Go,        ",
        "128, 78, 72,  97, 36.6, 20, UNKNOWN, , Hold,     POSTURAL",
        // Australian heart-failure guidance.
        "128, 78, 72,  97, 36.6, ,   NO,  1.9, Go,        ",
        "128, 78, 72,  97, 36.6, ,   NO,  2.0, Hold,      WEIGHT",
        // Design choices.
        "88,  60, 72,  97, 36.6, ,   NO,  ,    Go,        ",
        "88,  60, 72,  97, 36.6, ,   YES, ,    Hold,      LOW_PRESSURE",
        "90,  60, 72,  97, 36.6, ,   YES, ,    Go,        ",
        "128, 78, 49,  97, 36.6, ,   NO,  ,    Go,        ",
        "128, 78, 49,  97, 36.6, ,   YES, ,    Hold,      SLOW_PULSE",
        "128, 78, 50,  97, 36.6, ,   YES, ,    Go,        ",
        "128, 78, 40,  97, 36.6, ,   NO,  ,    Go,        ",
        "128, 78, 39,  97, 36.6, ,   NO,  ,    Hold,      SLOW_PULSE"
    })
    void each_line_holds_where_its_source_draws_it(
            Integer systolic,
            Integer diastolic,
            Integer pulse,
            Integer oxygen,
            Double temperature,
            Integer drop,
            Answer symptoms,
            Double gain,
            String outcome,
            String rule) {
        AtRest found = AtRest.of(
                new Vitals(systolic, diastolic, pulse, oxygen, temperature, drop, gain, symptoms), RestSet.INSTRUCTORS);

        assertEquals(outcome, found.getClass().getSimpleName());
        assertEquals(
                rule == null ? List.of() : List.of(rule),
                found.reasons().stream().map(reason -> reason.rule().id()).toList());
    }

    @Test
    void all_broken_lines_are_told_and_not_only_the_first() {
        AtRest.Hold hold = assertInstanceOf(
                AtRest.Hold.class,
                AtRest.of(new Vitals(182, 96, 104, 97, 38.4, null, null, Answer.NO), RestSet.INSTRUCTORS));

        assertEquals(
                List.of("Resting pulse 104, over 100.", "Blood pressure 182/96.", "Temperature 38.4 °C, over 38 °C."),
                hold.reasons().stream().map(Finding::text).toList());
    }

    /** ESC/ESH, from memory: 180/110 with symptoms is an emergency, without them a same-day matter. */
    @ParameterizedTest
    @CsvSource({
        "182, 96, YES, EMERGENCY",
        "182, 96, NO, SAME_DAY",
        "170, 112, UNKNOWN, EMERGENCY",
        "150, 102, NO, ROUTINE",
        "150, 102, YES, ROUTINE"
    })
    void very_high_pressure_is_more_urgent_when_it_is_felt_or_nobody_asked(
            int systolic, int diastolic, Answer symptoms, Urgency urgency) {
        AtRest found =
                AtRest.of(new Vitals(systolic, diastolic, 72, null, null, null, null, symptoms), RestSet.INSTRUCTORS);

        assertEquals(urgency, assertInstanceOf(AtRest.Hold.class, found).urgency());
    }

    @Test
    void what_was_not_measured_is_named() {
        assertEquals(
                List.of("Blood pressure not measured.", "Resting pulse not measured."),
                assertInstanceOf(AtRest.NotMeasured.class, AtRest.of(Vitals.notMeasured(), RestSet.INSTRUCTORS))
                        .reasons()
                        .stream()
                        .map(Finding::text)
                        .toList());
    }

    /**
     * The published lists disagree: BACR 2006 holds from 180/100, Australian heart-failure guidance over 180/110, a US
     * rehabilitation list over 200/100, ACSM over 200/110. From 180/110 on, D8 of the red flags holds under all of them.
     */
    @ParameterizedTest
    @CsvSource({
        "INSTRUCTORS,   150, 100, 100, Hold",
        "INSTRUCTORS,   150, 99,  101, Hold",
        "HEART_FAILURE, 150, 100, 100, LightOnly",
        "HEART_FAILURE, 179, 109, 120, LightOnly",
        "HEART_FAILURE, 150, 110, 100, Hold",
        "CARDIAC_REHAB, 150, 100, 120, LightOnly",
        "CARDIAC_REHAB, 150, 101, 100, Hold",
        "TESTING,       150, 109, 120, LightOnly",
        "TESTING,       180, 90,  100, Hold",
        "TESTING,       150, 90,  121, Hold"
    })
    void a_practice_holds_by_the_list_it_has_chosen(
            RestSet set, int systolic, int diastolic, int pulse, String outcome) {
        AtRest found = AtRest.of(new Vitals(systolic, diastolic, pulse, null, null, null, null, Answer.NO), set);

        assertEquals(outcome, found.getClass().getSimpleName());
    }

    /** Freeman et al. 2011, Clin Auton Res 21:69-72: 10 mmHg of the lower pressure. */
    @ParameterizedTest
    @CsvSource({"9, YES, Go", "10, YES, Hold", "10, UNKNOWN, Hold", "10, NO, Go"})
    void the_lower_pressure_falling_on_standing_holds_when_it_is_felt(int drop, Answer felt, String outcome) {
        Vitals vitals = new Vitals(128, 78, 72, null, null, null, null, felt, drop);

        assertEquals(outcome, AtRest.of(vitals, RestSet.INSTRUCTORS).getClass().getSimpleName());
    }
}
