package newel.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LooksTest {
    @Test
    void every_tone_breadth_and_sex_is_among_them() {
        Set<Look.Skin> skins = EnumSet.noneOf(Look.Skin.class);
        Set<Girth> girths = EnumSet.noneOf(Girth.class);
        Set<Look.Sex> sexes = EnumSet.noneOf(Look.Sex.class);
        Set<Hair.Cut> cuts = EnumSet.noneOf(Hair.Cut.class);
        Set<Hair.Tint> tints = EnumSet.noneOf(Hair.Tint.class);
        for (Look look : Looks.all()) {
            skins.add(look.skin());
            girths.add(look.girth());
            sexes.add(look.sex());
            cuts.add(look.hair().cut());
            tints.add(look.hair().tone());
        }

        assertEquals(EnumSet.allOf(Look.Skin.class), skins);
        assertEquals(EnumSet.allOf(Girth.class), girths);
        assertEquals(EnumSet.allOf(Look.Sex.class), sexes);
        assertEquals(EnumSet.allOf(Hair.Cut.class), cuts);
        assertEquals(EnumSet.allOf(Hair.Tint.class), tints);
    }

    @Test
    void an_id_that_is_stored_finds_its_look_again() {
        for (Look look : Looks.all()) {
            assertEquals(Optional.of(look), Looks.of(look.id()));
        }
        assertEquals(Optional.empty(), Looks.of("nobody"));
    }

    @Test
    void labels_say_in_plain_words_who_is_drawn() {
        assertEquals(
                "a woman with grey hair in a bun, medium skin",
                Looks.all().getFirst().label());
        assertEquals(
                Looks.all().size(),
                new HashSet<>(Looks.all().stream().map(Look::label).toList()).size());
    }

    @Test
    void a_catalogue_is_spread_over_everyone() {
        Set<Look> met = new HashSet<>();
        IntStream.range(0, 200).forEach(i -> met.add(Looks.spread("variant-" + i)));

        assertEquals(Set.copyOf(Looks.all()), met);
    }

    @Test
    void everyone_is_drawn_on_the_same_skeleton() {
        // Shoes, arrows and the room follow the skeleton alone; only breadth, hair and tones differ.
        List<List<List<Spot>>> shoes =
                Looks.all().stream().map(LooksTest::shoes).toList();

        assertEquals(4, shoes.getFirst().size());
        assertEquals(1, new HashSet<>(shoes).size());
        assertTrue(new HashSet<>(Looks.all().stream().map(LooksTest::width).toList()).size() > 2);
    }

    private static List<List<Spot>> shoes(Look look) {
        return frames(look).stream()
                .flatMap(frame -> frame.marks().stream())
                .filter(mark -> mark instanceof Mark.Outline outline && !outline.haloed() && mark.tone() == Tone.SHOE)
                .map(Mark::spots)
                .toList();
    }

    private static double width(Look look) {
        return frames(look).stream()
                .flatMap(frame -> frame.marks().stream())
                .filter(mark -> mark.tone() == Tone.SHIRT)
                .mapToDouble(mark -> Bounds.of(mark.spots()).width())
                .max()
                .orElseThrow();
    }

    private static List<Frame> frames(Look look) {
        Scene scene = new Scene(Drawn.rightArmUp(), Drawn.SIDE, Set.of(), Scene.Working.ONE_SIDE, false, look);
        return new Drawing(scene).picture("Arm", "Up").frames();
    }
}
