package newel.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import newel.Shipped;
import newel.body.KeyPose;
import newel.body.Side;
import newel.body.Trimming;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped catalogue: every rule is held when it is read, and these tests say what it holds besides. */
class CatalogueTest {
    private static final Catalogue CATALOGUE = Shipped.CATALOGUE;

    @Test
    void it_is_sound_and_of_some_size() {
        CatalogueFigures figures = CatalogueFigures.of(Catalogues.read());

        assertEquals(0, figures.faults());
        assertTrue(figures.movements() >= 34 && figures.variants() >= 180, figures::toString);
        assertEquals(
                List.of(
                        "movements: " + CATALOGUE.movements().size(),
                        "variants: " + CATALOGUE.variants().size(),
                        "links: " + figures.links(),
                        "faults: 0"),
                figures.lines());
    }

    @Test
    void every_variant_names_the_movement_it_belongs_to() {
        for (Movement movement : CATALOGUE.movements()) {
            for (Variant variant : movement.variants()) {
                assertEquals(movement, CATALOGUE.movementOf(variant));
            }
        }
    }

    @Test
    void every_purpose_is_the_main_one_of_some_movement() {
        for (Purpose purpose : Purpose.values()) {
            int most = CATALOGUE.variants().stream()
                    .mapToInt(variant -> variant.purposes().weight(purpose))
                    .max()
                    .orElseThrow();

            assertEquals(3, most, purpose.name());
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void every_kind_is_there_in_a_seated_form(Kind kind) {
        List<Movement> seated = CATALOGUE.movements().stream()
                .filter(movement -> movement.kind() == kind)
                .filter(movement -> movement.variants().stream().anyMatch(CatalogueTest::seated))
                .toList();

        assertNotEquals(List.of(), seated);
    }

    @ParameterizedTest
    @ValueSource(strings = {"t-raise", "y-raise"})
    void t_and_y_raises_have_a_seated_and_a_folded_form(String id) {
        Set<String> variants = CATALOGUE.movement(id).orElseThrow().variants().stream()
                .map(Variant::id)
                .collect(Collectors.toSet());

        assertTrue(
                variants.containsAll(Set.of(id + "-seated-back", id + "-seated-edge", id + "-fold")),
                variants::toString);
    }

    @Test
    void a_trim_to_its_least_still_moves() {
        for (Variant variant : CATALOGUE.variants()) {
            Trim trim = variant.trim();
            List<KeyPose> trimmed = Trimming.trimmed(variant.keyPoses(), trim.part(), trim.least(), trim.least());

            assertEquals(variant.keyPoses().size(), trimmed.size(), variant.id());
            assertEquals(variant.keyPoses().getFirst(), trimmed.getFirst(), variant.id());
        }
    }

    @Test
    void one_sided_variants_are_written_for_the_right() {
        Variant row = CATALOGUE.variant("bag-row-counter").orElseThrow();
        double lifted = row.keyPoses().getLast().pose().arm(Side.RIGHT).elbow();
        double start = row.keyPoses().getFirst().pose().arm(Side.RIGHT).elbow();

        assertEquals(Sides.EACH, row.sides());
        assertTrue(lifted > start + 90);
    }

    private static boolean seated(Variant variant) {
        return variant.position() == Position.SEATED_BACK || variant.position() == Position.SEATED_EDGE;
    }
}
