package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Riebe D et al. 2015, Med Sci Sports Exerc 47:2473-2479: the whole table, every combination of facts. */
class RowTest {
    @ParameterizedTest
    @CsvSource({
        // active, symptom, disease, vigorous, row, clearance, intensity
        "false, false, false, false, A3,  NOT_NECESSARY,    LIGHT_TO_MODERATE",
        "false, false, false, true,  A3,  NOT_NECESSARY,    LIGHT_TO_MODERATE",
        "false, false, true,  false, A2,  RECOMMENDED,      LIGHT_TO_MODERATE",
        "false, false, true,  true,  A2,  RECOMMENDED,      LIGHT_TO_MODERATE",
        "false, true,  false, false, A1,  RECOMMENDED,      LIGHT_TO_MODERATE",
        "false, true,  false, true,  A1,  RECOMMENDED,      LIGHT_TO_MODERATE",
        "false, true,  true,  false, A1,  RECOMMENDED,      LIGHT_TO_MODERATE",
        "false, true,  true,  true,  A1,  RECOMMENDED,      LIGHT_TO_MODERATE",
        "true,  false, false, false, B3,  NOT_NECESSARY,    MODERATE_OR_VIGOROUS",
        "true,  false, false, true,  B3,  NOT_NECESSARY,    MODERATE_OR_VIGOROUS",
        "true,  false, true,  false, B2,  NOT_NECESSARY,    MODERATE",
        "true,  false, true,  true,  B2V, BEFORE_VIGOROUS,  MODERATE_OR_VIGOROUS",
        "true,  true,  false, false, B1,  STOP_AND_SEEK,    LIGHT_TO_MODERATE",
        "true,  true,  false, true,  B1,  STOP_AND_SEEK,    LIGHT_TO_MODERATE",
        "true,  true,  true,  false, B1,  STOP_AND_SEEK,    LIGHT_TO_MODERATE",
        "true,  true,  true,  true,  B1,  STOP_AND_SEEK,    LIGHT_TO_MODERATE"
    })
    void the_first_row_that_matches_decides(
            boolean active,
            boolean symptom,
            boolean disease,
            boolean vigorous,
            Row row,
            Row.Clearance clearance,
            Intensity intensity) {
        Row found = Row.first(active, symptom, disease, vigorous);

        assertEquals(row, found);
        assertEquals(clearance, found.clearance());
        assertEquals(intensity, found.intensity());
    }
}
