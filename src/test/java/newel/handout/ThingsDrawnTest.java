package newel.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import newel.Shipped;
import newel.figure.Frame;
import newel.figure.Picture;
import newel.figure.Tone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the words name is in the picture. */
class ThingsDrawnTest {
    private static Picture picture(String variant) {
        return Pictures.of(Shipped.variant(variant));
    }

    private static List<String> captions(String variant) {
        return picture(variant).frames().stream().map(Frame::caption).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "quad-sidelying-towel, TOWEL",
        "quad-standing-towel, TOWEL",
        "sink-stand-wipe, TOWEL",
        "sink-stand-step-wipe, TOWEL",
        "floor-half-kneel-high, CUSHION",
        "kneesway-wide, CUSHION",
        "adductor-lying, CUSHION"
    })
    void every_frame_shows_what_is_held_or_lies_under(String variant, Tone tone) {
        for (Frame frame : picture(variant).frames()) {
            assertTrue(frame.marks().stream().anyMatch(mark -> mark.tone() == tone), frame.caption());
        }
    }

    @Test
    void moves_of_the_fingers_show_the_hand_alone_and_then_the_whole_person() {
        assertEquals(List.of("Open", "Closed", "Whole body"), captions("fingers-open-close"));
        assertEquals(List.of("First finger", "Small finger", "Whole body"), captions("finger-to-thumb"));
        assertEquals(List.of("Start", "Finish"), captions("wrist-up-down"));
    }

    @Test
    void a_step_touch_begins_with_the_feet_close_and_the_right_foot_goes_first() {
        assertEquals(List.of("Start", "On the way", "Finish"), captions("steptouch-free"));
        assertEquals("right, then left", said("steptouch-free"));
        assertEquals("left, then right", said("sink-stand-rest"));
    }

    private static String said(String variant) {
        return picture(variant).finish().marks().stream()
                .filter(newel.figure.Mark.Words.class::isInstance)
                .map(mark -> ((newel.figure.Mark.Words) mark).words())
                .findFirst()
                .orElse("");
    }
}
