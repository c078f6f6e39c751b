package newel.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import newel.Shipped;
import newel.catalogue.Variant;
import newel.figure.Bounds;
import newel.figure.Frame;
import newel.figure.Picture;
import newel.figure.Spot;
import org.junit.jupiter.api.Test;

class EveryPictureTest {
    @Test
    void every_variants_picture_has_a_title_and_words_and_nothing_outside_its_frame() {
        List<String> outside = new ArrayList<>();
        for (Variant variant : Shipped.CATALOGUE.variants()) {
            Picture picture = Pictures.of(variant);
            assertFalse(picture.title().isBlank(), variant.id());
            assertFalse(picture.description().isBlank(), variant.id());
            assertFalse(picture.frames().isEmpty(), variant.id());
            for (Frame frame : picture.frames()) {
                frame.marks().stream()
                        .filter(mark -> mark.spots().stream().anyMatch(spot -> outside(frame.bounds(), spot)))
                        .forEach(mark -> outside.add(variant.id() + ": " + mark.tone()));
            }
        }

        assertEquals(List.of(), outside);
    }

    private static boolean outside(Bounds bounds, Spot spot) {
        return spot.x() < bounds.left()
                || spot.x() > bounds.right()
                || spot.y() < bounds.top()
                || spot.y() > bounds.bottom();
    }
}
