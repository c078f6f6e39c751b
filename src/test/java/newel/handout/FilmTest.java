package newel.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import newel.Shipped;
import newel.catalogue.Variant;
import newel.figure.Film;
import newel.figure.Mark;
import newel.figure.Spot;
import newel.limit.Share;
import org.junit.jupiter.api.Test;

class FilmTest {
    @Test
    void every_variant_that_moves_has_a_film_whose_marks_stay_in_its_window() {
        for (Variant variant : Shipped.CATALOGUE.variants()) {
            assertEquals(variant.keyPoses().size() > 1, Pictures.moves(variant), variant.id());
        }
        Film film = film("towel-row-seated-edge");
        for (List<Mark> frame : film.passes().getFirst()) {
            for (Mark mark : frame) {
                for (Spot spot : mark.spots()) {
                    assertTrue(spot.x() >= film.window().left()
                            && spot.x() <= film.window().right());
                    assertTrue(spot.y() >= film.window().top()
                            && spot.y() <= film.window().bottom());
                }
            }
        }
    }

    @Test
    void it_begins_and_ends_as_the_picture_does() {
        Film film = film("towel-row-seated-edge");
        List<List<Mark>> frames = film.passes().getFirst();

        assertEquals(1, film.passes().size());
        assertEquals(1, film.legs());
        assertEquals(25, frames.size());
        assertEquals(bodies(picture(0)), bodies(frames.getFirst()));
        assertTrue(!bodies(frames.getFirst()).equals(bodies(frames.getLast())));
    }

    @Test
    void sides_that_take_turns_have_a_pass_each() {
        assertEquals(2, film("march-free").passes().size());
        assertEquals(1, film("march-one-hand").passes().size());
    }

    @Test
    void what_circles_comes_back_to_where_it_began() {
        Film film = film("roll-both-seated");
        List<List<Mark>> frames = film.passes().getFirst();

        assertEquals(4, film.legs());
        assertEquals(bodies(frames.getFirst()), bodies(frames.getLast()));
    }

    @Test
    void a_trimmed_film_goes_less_far() {
        Variant row = Shipped.variant("t-raise-seated-edge");
        Film whole = Pictures.film(row, Share.WHOLE).orElseThrow();
        Film half = Pictures.film(row, new Share(0.5, 0.5)).orElseThrow();

        assertTrue(half.window().width() < whole.window().width());
    }

    private static List<Mark> picture(int frame) {
        return Pictures.of(Shipped.variant("towel-row-seated-edge"))
                .frames()
                .get(frame)
                .marks();
    }

    /** Outlines alone: a picture has its floor and words besides, and its towel hangs by its own length. */
    private static List<String> bodies(List<Mark> marks) {
        return marks.stream()
                .filter(mark -> mark instanceof Mark.Outline)
                .map(mark -> mark.tone() + " " + mark.text())
                .toList();
    }

    private static Film film(String variant) {
        return Pictures.film(Shipped.variant(variant), Share.WHOLE).orElseThrow();
    }
}
