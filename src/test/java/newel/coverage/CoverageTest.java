package newel.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.util.List;
import newel.Shipped;
import newel.catalogue.Catalogue;
import newel.catalogue.Position;
import newel.catalogue.Variant;
import newel.limit.Fitting;
import newel.limit.Presets;
import org.junit.jupiter.api.Test;

class CoverageTest {
    private static final Catalogue CATALOGUE = Shipped.CATALOGUE;
    private static final Presets PRESETS = Presets.read();
    private static final Fitting FITTING = Shipped.FITTING;

    @Test
    void every_gap_of_the_catalogue_is_explained_and_no_explanation_is_idle() {
        assertEquals(
                List.of(),
                Coverage.of(CATALOGUE, PRESETS, Strictness.read(), FITTING).faults());
    }

    @Test
    void a_row_counts_the_variants_that_fit_and_serve() throws Exception {
        Row lying = row("lying only", "limits: [{name: lying only, limit: {positions: [lying]}}]");

        assertEquals((int) lyingDown(Served.HIPS), lying.fitting().get(Served.HIPS));
        assertEquals((int) lyingDown(Served.MOBILITY), lying.fitting().get(Served.MOBILITY));
    }

    @Test
    void a_gap_that_nobody_explains_and_an_explanation_without_a_gap_are_faults() throws Exception {
        Coverage coverage = coverage(
                "{limits: [{name: nothing at all, limit: {effort: 0}}], gaps: [{row: shoulder-pain, serves: [legs], why: no}]}");

        assertEquals(true, coverage.faults().contains("nothing at all, legs: nobody has explained this gap"));
        assertEquals(true, coverage.faults().contains("shoulder-pain, legs: is explained as a gap, but is none"));
    }

    private static long lyingDown(Served served) {
        return CATALOGUE.variants().stream()
                .filter(variant -> variant.position() == Position.LYING && serves(variant, served))
                .count();
    }

    private static boolean serves(Variant variant, Served served) {
        return served.by(CATALOGUE.movementOf(variant), variant);
    }

    private static Row row(String name, String yaml) throws Exception {
        return coverage(yaml).rows().stream()
                .filter(row -> row.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Coverage coverage(String yaml) throws Exception {
        return Coverage.of(CATALOGUE, PRESETS, Strictness.of(new YAMLMapper().readTree(yaml)), FITTING);
    }
}
