package newel.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CatalogueTest {
    private final Catalogue catalogue = Catalogues.read().orStop();

    @Test
    void the_shipped_catalogue_has_no_flaw_and_its_content() {
        assertEquals(36, catalogue.movements().size());
        assertTrue(
                catalogue.variants().size() >= 180,
                () -> "variants: " + catalogue.variants().size());
    }

    @Test
    void every_variant_names_the_movement_it_belongs_to() {
        for (Movement movement : catalogue.movements()) {
            for (Variant variant : movement.variants()) {
                assertEquals(movement, catalogue.movementOf(variant));
            }
        }
    }
}
