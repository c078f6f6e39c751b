package newel.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import newel.Shipped;
import newel.catalogue.Dose;
import org.junit.jupiter.api.Test;

class PaceWordsTest {
    @Test
    void what_is_counted_slowly_says_how_long_one_takes() {
        assertEquals(
                "About 6 seconds each.", PaceWords.pace(new Dose(1, 8, 0), Shipped.variant("towel-row-seated-back")));
        assertEquals("", PaceWords.pace(new Dose(1, 0, 30), Shipped.variant("towel-row-seated-back")));
        assertEquals("", PaceWords.pace(new Dose(1, 2, 15), Shipped.variant("towel-row-seated-back")));
    }

    /** From 5 of 10 on one can talk and not sing: Nelson et al. 2007, Circulation 116:1094; the talk from memory. */
    @Test
    void effort_is_told_by_talking_and_says_what_to_do_instead() {
        Shipped.CATALOGUE
                .variants()
                .forEach(variant -> assertEquals(
                        variant.effort() >= 5
                                ? "You can talk, not sing. If you cannot talk, do fewer."
                                : "Easy: you could sing.",
                        PaceWords.effort(variant),
                        variant.id()));
    }
}
