package newel.limit;

import static newel.Shipped.PRESETS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import newel.body.Motion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalledTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 3);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stroke-weak-side | LEFT | '' | Stroke, weaker left side",
                "hip-replacement-posterior | RIGHT | '' | New right hip, operated from behind",
                "hip-replacement-posterior | BOTH | '' | New hip, operated from behind",
                "shoulder-pain | RIGHT | '' | Shoulder pain, right side",
                "shoulder-pain | RIGHT | Sore at night | Shoulder pain, right side (“Sore at night”)",
                "parkinsons | BOTH | '' | Parkinson's disease",
                "low-pressure-on-standing | BOTH | '' | Low blood pressure on standing"
            })
    void a_limitation_is_called_as_people_speak(String preset, Sided side, String said, String called) {
        assertEquals(called, Called.of(preset(preset, side, said)));
    }

    @Test
    void limits_of_ones_own_are_called_by_their_words() {
        assertEquals("Raise, left side", Called.of(own(Sided.LEFT, 80)));
    }

    @Test
    void a_sentence_about_it_goes_on_in_small_letters() {
        assertEquals(
                "stroke, weaker left side, logged 3 March 2026, from the client",
                Whose.of(preset("stroke-weak-side", Sided.LEFT, "")));
    }

    @Test
    void every_spoken_name_reads_without_leftovers_of_its_key() {
        for (Preset preset : PRESETS.all()) {
            for (Sided side : Sided.values()) {
                String called = Called.of(preset(preset.id(), side, ""));
                assertTrue(called.matches("[A-Z][A-Za-z', ]+"), called);
                assertFalse(called.contains("  ") || called.contains("weak side"), called);
            }
        }
    }

    @Test
    void the_same_preset_on_the_same_side_says_the_same() {
        Limitation left = preset("shoulder-pain", Sided.LEFT, "");

        assertTrue(left.saysTheSame(preset("shoulder-pain", Sided.LEFT, "Aches")));
        assertFalse(left.saysTheSame(preset("shoulder-pain", Sided.RIGHT, "")));
        assertFalse(left.saysTheSame(preset("frozen-shoulder", Sided.LEFT, "")));
        assertTrue(own(Sided.LEFT, 80).saysTheSame(own(Sided.LEFT, 80)));
        assertFalse(own(Sided.LEFT, 80).saysTheSame(own(Sided.LEFT, 70)));
    }

    private static Limitation preset(String id, Sided side, String said) {
        return PRESETS.find(id).orElseThrow().limitation("1", said, side, Limitation.Source.CLIENT, DAY, null);
    }

    private static Limitation own(Sided side, double degrees) {
        return new Limitation(
                "2",
                "",
                "Raise",
                side,
                Limitation.Source.CLIENT,
                DAY,
                null,
                List.of(new Limit.Angle(Motion.SHOULDER_RAISE, side, degrees)),
                List.of());
    }
}
