package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseRulesTest {
    /** Screening reference 13.15: Bull et al. 2020 (WHO), 65 and over; one hard minute counts as two. */
    @ParameterizedTest
    @CsvSource({
        // moderate, vigorous, strength days, balance days, equivalent, minutes, strength, balance
        "150, 0,  2, 3, 150, true,  true,  true",
        "0,   75, 2, 3, 150, true,  true,  true",
        "90,  30, 3, 2, 150, true,  true,  false",
        "0,   0,  2, 3, 0,   false, true,  true",
        "30,  0,  0, 0, 30,  false, false, false",
        "149, 0,  1, 3, 149, false, false, true",
        "75,  37, 2, 3, 149, false, true,  true"
    })
    void a_week_is_set_beside_the_guideline(
            int moderate,
            int vigorous,
            int strengthDays,
            int balanceDays,
            int equivalent,
            boolean minutes,
            boolean strength,
            boolean balance) {
        WeekCheck week = new WeekCheck(moderate, vigorous, strengthDays, balanceDays);

        assertEquals(equivalent, week.moderateEquivalent());
        assertEquals(minutes, week.aerobicMet());
        assertEquals(strength, week.strengthMet());
        assertEquals(balance, week.balanceMet());
    }

    /** Screening reference 13.16: Baechle and Earle; the guard for pain is a design choice. */
    @ParameterizedTest
    @CsvSource({
        // goal, first, second, load, percent, running, pain, next
        "10, 12, 12, 5,  10,  true,  0, 5.5",
        "10, 11, 11, 5,  10,  true,  0, 5",
        "8,  10, 10, 20, 2.5, true,  0, 20.5",
        "15, 17, 17, 2,  10,  true,  0, 2.2",
        "10, 9,  8,  5,  10,  true,  0, 5",
        "10, 12, 11, 5,  10,  true,  0, 5",
        "10, 11, 12, 5,  10,  true,  0, 5",
        "10, 12, 12, 5,  10,  false, 0, 5",
        "10, 12, 12, 5,  10,  true,  2, 5.5",
        "10, 12, 12, 5,  10,  true,  3, 5"
    })
    void two_over_the_goal_in_two_sessions_running_adds_load(
            int goal,
            int first,
            int second,
            BigDecimal load,
            BigDecimal percent,
            boolean running,
            int pain,
            BigDecimal next) {
        BigDecimal found = new LoadRise(goal, first, second, running, pain).next(load, percent, PainZones.LOWER);

        assertEquals(0, next.compareTo(found), found.toPlainString());
    }

    /** ACSM: 2 to 10 %. */
    @Test
    void a_rise_outside_the_published_size_is_refused() {
        LoadRise rise = new LoadRise(10, 12, 12, true, 0);

        assertThrows(
                IllegalArgumentException.class,
                () -> rise.next(BigDecimal.TEN, new BigDecimal("1.9"), PainZones.LOWER));
        assertThrows(
                IllegalArgumentException.class,
                () -> rise.next(BigDecimal.TEN, new BigDecimal("10.1"), PainZones.LOWER));
    }
}
