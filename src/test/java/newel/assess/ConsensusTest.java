package newel.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import newel.client.Done;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Quantity;
import newel.client.Sex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConsensusTest {
    /**
     * Grip below 27/16 kg: Cruz-Jentoft AJ et al. 2019, Age Ageing 48:16-31; below 28/18 kg: Chen LK et al. 2020, J Am Med
     * Dir Assoc 21:300-307. Five stands over 15 s, and 12 s or more; a battery of 8 or less, and 9 or less: the same two.
     */
    @ParameterizedTest
    @CsvSource({
        "EUROPE, GRIP, MALE, 26.9, LOW",
        "EUROPE, GRIP, MALE, 27, EWGSOP2_OK",
        "ASIA, GRIP, MALE, 27.9, LOW",
        "ASIA, GRIP, MALE, 28, AWGS_OK",
        "ASIA, GRIP, FEMALE, 17.9, LOW",
        "ASIA, GRIP, FEMALE, 18, AWGS_OK",
        "EUROPE, SPPB, MALE, 9, EWGSOP2_OK",
        "ASIA, SPPB, MALE, 9, LOW",
        "ASIA, SPPB, MALE, 10, AWGS_OK"
    })
    void a_practice_reads_a_result_by_the_group_that_it_follows(
            Consensus group, Measure measure, Sex sex, BigDecimal value, String code) {
        Guides guides = Guides.shipped().following(group);
        Measured measured =
                new Measured(measure, new Quantity(value, measure.unit()), LocalDate.of(2026, 3, 1), Done.AS_TOLD);

        List<String> said = new Assessing(guides)
                .of(measured, 74, sex).verdicts().stream()
                        .filter(verdict -> verdict.table() instanceof CutOff cut && cut.of() != null)
                        .map(verdict -> verdict.says().code())
                        .toList();

        assertEquals(List.of(code), said);
    }
}
