package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Screening reference 7.3 and 13.12: ACSM, AHA, Australian toolkit, Holland 2014, Colberg 2016. */
class DuringTest {
    @ParameterizedTest
    @CsvSource({
        // before, upper, lower, oxygen, pulse, angina from, walk test, sign
        "150, 142, ,    ,   ,    ,    false, ",
        "150, 141, ,    ,   ,    ,    false, ",
        "150, 140, ,    ,   ,    ,    false, PRESSURE_FALLS",
        ",    251, 100, ,   ,    ,    false, PRESSURE_HIGH",
        ",    250, 115, ,   ,    ,    false, ",
        ",    180, 116, ,   ,    ,    false, PRESSURE_HIGH",
        ",    ,    ,    87, ,    ,    false, OXYGEN",
        ",    ,    ,    88, ,    ,    false, ",
        ",    ,    ,    87, ,    ,    true,  ",
        ",    ,    ,    80, ,    ,    true,  ",
        ",    ,    ,    79, ,    ,    true,  OXYGEN_WALK",
        ",    ,    ,    ,   109, 120, false, ",
        ",    ,    ,    ,   110, 120, false, NEAR_ANGINA"
    })
    void a_reading_stops_where_its_source_draws_the_line(
            Integer before,
            Integer upper,
            Integer lower,
            Integer oxygen,
            Integer pulse,
            Integer angina,
            boolean walk,
            StopSign sign) {
        assertEquals(
                sign == null ? Set.of() : Set.of(sign),
                new During(before, upper, lower, oxygen, pulse, angina, walk).stops());
    }

    /** 13.12 rows 1 and 7: pressure in the chest is E1 when it stays; grey, clammy and confused is an emergency. */
    @Test
    void each_stop_sign_says_what_is_done() {
        assertEquals(StopSign.Then.EMERGENCY_IF_IT_STAYS, StopSign.CHEST.then());
        assertEquals(StopSign.Then.EMERGENCY, StopSign.POOR_BLOOD_FLOW.then());
        assertEquals(StopSign.Then.EMERGENCY, StopSign.STROKE_SIGNS.then());
        assertEquals(StopSign.Then.REST, StopSign.OXYGEN.then());
        assertEquals(13, StopSign.values().length);
    }
}
