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
        "179, 99, 80,  96, 36.6, ,   NO,  ,    LightOnly, PRESSURE_RAISED",
        "159, 89, 100, 95, 36.9, ,   NO,  ,    Go,        ",
        "135, 82, 84,  89, 36.9, ,   NO,  ,    Hold,      SPO2",
        "126, 74, 78,  96, 36.5, 24, YES, ,    Hold,      POSTURAL",
        // The lines themselves, one on each side: BACR 2006.
        "180, 70, 72,  97, 36.6, ,   NO,  ,    Hold,      PRESSURE",
        "128, 100, 72, 97, 36.6, ,   NO,  ,    Hold,      PRESSURE",
        "160, 70, 72,  97, 36.6, ,   NO,  ,    LightOnly, PRESSURE_RAISED",
        "128, 90, 72,  97, 36.6, ,   NO,  ,    LightOnly, PRESSURE_RAISED",
        "128, 78, 101, 97, 36.6, ,   NO,  ,    Hold,      PULSE",
        "128, 78, 72,  90, 38.0, ,   NO,  ,    Go,        ",
        "128, 78, 72,  97, 38.1, ,   NO,  ,    Hold,      FEVER",
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
        "128, 78, 49,  97, 36.6, ,   NO,  ,    Go,        ",
        "128, 78, 49,  97, 36.6, ,   YES, ,    Hold,      SLOW_PULSE",
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
        AtRest found = AtRest.of(new Vitals(systolic, diastolic, pulse, oxygen, temperature, drop, gain, symptoms));

        assertEquals(outcome, found.getClass().getSimpleName());
        assertEquals(
                rule == null ? List.of() : List.of(rule),
                found.reasons().stream().map(reason -> reason.rule().id()).toList());
    }

    @Test
    void all_broken_lines_are_told_and_not_only_the_first() {
        AtRest.Hold hold = assertInstanceOf(
                AtRest.Hold.class, AtRest.of(new Vitals(182, 96, 104, 97, 38.4, null, null, Answer.NO)));

        assertEquals(
                List.of("Blood pressure 182/96.", "Resting pulse 104, over 100.", "Temperature 38.4 °C, over 38 °C."),
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
        AtRest found = AtRest.of(new Vitals(systolic, diastolic, 72, null, null, null, null, symptoms));

        assertEquals(urgency, assertInstanceOf(AtRest.Hold.class, found).urgency());
    }

    @Test
    void what_was_not_measured_is_named() {
        assertEquals(
                List.of("Blood pressure not measured.", "Resting pulse not measured."),
                assertInstanceOf(AtRest.NotMeasured.class, AtRest.of(Vitals.notMeasured())).reasons().stream()
                        .map(Finding::text)
                        .toList());
    }
}
