package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import newel.client.Answer;
import newel.screen.Glucose.Ketones;
import newel.screen.Glucose.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Screening reference 7.2 and 13.11: ADA (from memory), Turner et al. 2019, Colberg et al. 2016. */
class SugarTodayTest {
    @ParameterizedTest
    @CsvSource({
        // value, unit, ketones, helped in 24 h, alone, outcome, rule
        "50,   MG_DL,  NOT_KNOWN,         NO,  NO,  NotToday,       SUGAR-VERY-LOW",
        "70,   MG_DL,  NOT_KNOWN,         NO,  NO,  SugarFirst,     SUGAR-SUGAR-FIRST",
        "90,   MG_DL,  NOT_KNOWN,         NO,  NO,  SugarFirst,     SUGAR-SUGAR-FROM-THE-START",
        "150,  MG_DL,  NOT_KNOWN,         YES, NO,  NotToday,       SUGAR-HELPED",
        "250,  MG_DL,  NONE_OR_TRACE,     NO,  NO,  ModerateAtMost, SUGAR-HIGH",
        // Each line on both sides, in both units as published.
        "53,   MG_DL,  NOT_KNOWN,         NO,  NO,  NotToday,       SUGAR-VERY-LOW",
        "54,   MG_DL,  NOT_KNOWN,         NO,  NO,  NotYet,         SUGAR-LOW",
        "54,   MG_DL,  NOT_KNOWN,         NO,  YES, NotToday,       SUGAR-LOW",
        "54,   MG_DL,  NOT_KNOWN,         NO,  UNKNOWN, NotToday,   SUGAR-LOW",
        "69,   MG_DL,  NOT_KNOWN,         NO,  NO,  NotYet,         SUGAR-LOW",
        "89,   MG_DL,  NOT_KNOWN,         NO,  NO,  SugarFirst,     SUGAR-SUGAR-FIRST",
        "149,  MG_DL,  NOT_KNOWN,         NO,  NO,  SugarFirst,     SUGAR-SUGAR-FROM-THE-START",
        "150,  MG_DL,  NOT_KNOWN,         NO,  NO,  Go,             SUGAR-GOOD",
        "249,  MG_DL,  NOT_KNOWN,         NO,  NO,  Go,             SUGAR-GOOD",
        "250,  MG_DL,  MODERATE_OR_LARGE, NO,  NO,  NotToday,       SUGAR-HIGH",
        "250,  MG_DL,  NOT_KNOWN,         NO,  NO,  NotYet,         SUGAR-HIGH",
        "349,  MG_DL,  NONE_OR_TRACE,     NO,  NO,  ModerateAtMost, SUGAR-HIGH",
        "350,  MG_DL,  NONE_OR_TRACE,     NO,  NO,  ModerateAtMost, SUGAR-VERY-HIGH",
        "350,  MG_DL,  MODERATE_OR_LARGE, NO,  NO,  NotToday,       SUGAR-VERY-HIGH",
        "150,  MG_DL,  NOT_KNOWN,         UNKNOWN, NO, NotToday,    SUGAR-HELPED",
        "2.9,  MMOL_L, NOT_KNOWN,         NO,  NO,  NotToday,       SUGAR-VERY-LOW",
        "3.0,  MMOL_L, NOT_KNOWN,         NO,  NO,  NotYet,         SUGAR-LOW",
        "3.8,  MMOL_L, NOT_KNOWN,         NO,  NO,  NotYet,         SUGAR-LOW",
        "3.9,  MMOL_L, NOT_KNOWN,         NO,  NO,  SugarFirst,     SUGAR-SUGAR-FIRST",
        "4.9,  MMOL_L, NOT_KNOWN,         NO,  NO,  SugarFirst,     SUGAR-SUGAR-FIRST",
        "5.0,  MMOL_L, NOT_KNOWN,         NO,  NO,  SugarFirst,     SUGAR-SUGAR-FROM-THE-START",
        "8.2,  MMOL_L, NOT_KNOWN,         NO,  NO,  SugarFirst,     SUGAR-SUGAR-FROM-THE-START",
        "8.3,  MMOL_L, NOT_KNOWN,         NO,  NO,  Go,             SUGAR-GOOD",
        "13.8, MMOL_L, NOT_KNOWN,         NO,  NO,  Go,             SUGAR-GOOD",
        "13.9, MMOL_L, NONE_OR_TRACE,     NO,  NO,  ModerateAtMost, SUGAR-HIGH",
        "19.3, MMOL_L, NONE_OR_TRACE,     NO,  NO,  ModerateAtMost, SUGAR-HIGH",
        "19.4, MMOL_L, NONE_OR_TRACE,     NO,  NO,  ModerateAtMost, SUGAR-VERY-HIGH"
    })
    void each_band_acts_as_published(
            BigDecimal value, Unit unit, Ketones ketones, Answer helped, Answer alone, String outcome, String rule) {
        SugarToday found = SugarToday.of(new Glucose(value, unit, ketones, helped, alone));

        assertEquals(outcome, found.getClass().getSimpleName());
        assertEquals(rule, found.finding().rule().id());
    }

    @Test
    void who_did_not_measure_measures_first() {
        assertEquals("NotYet", SugarToday.of(null).getClass().getSimpleName());
    }
}
