package newel.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each test takes shipped files, breaks them, and reads them from a folder of its own. */
class BrokenCatalogueTest {
    @TempDir
    Path folder;

    @Test
    void the_files_are_sound_before_they_are_broken() {
        put("chair-stand", "", "");
        put("t-raise", "", "");

        assertEquals(List.of(), flaws());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "t-raise | kind: strength | kind: magic | t-raise: kind does not know 'magic'",
                "t-raise | coordination: 1 | colour: red | t-raise-bent: colour is not a known key",
                "t-raise | repetitions: 6 | repetitions: six | t-raise-bent: dose.beginner.repetitions is not a number: \"six\"",
                "t-raise | reference: t-raise-seated-edge | reference: none | t-raise: the reference 'none' is not a variant",
                "t-raise | pitch: 8 | pitch: 8, roll: 3 | t-raise-bent: view.roll is not a known key",
                "t-raise | id: t-raise | id: t-rise | t-rise: the file is not named after the id",
                "neck-turn | to: neckturn-lying | to: none | neckturn-seated-back: the link to 'none' leads nowhere",
                "neck-turn | to: neckturn-lying | to: none | neckturn-standing: no link joins it to the rest of the movement",
                "neck-turn | to: neckturn-lying | to: neckturn-standing | neckturn-seated-back: its easier variants lead back to it",
                "neck-turn | rises: [ankle-down | rises: [toes | neckturn-seated-back: the link to 'neckturn-lying' does not know the rise 'toes'",
                "neck-turn | position: lying | position: standing | neckturn-lying: nothing is easier, and it is not done seated or lying",
                "shoulder-roll | id: roll-standing-heels | id: roll-standing | roll-standing: the id is used 2 times",
                "chair-stand | - \"Sit tall again.\" | # | chair-stand-lean: it has 2 steps; 3 to 5 are wanted",
                "chair-stand | Helps you get up | Considerably facilitates independent ambulatory activities | chair-stand: the words read at grade 15.0; 6 is the most",
                "chair-stand | Sit tall again. | Sitting tall again. | chair-stand-lean: begins with no verb or part: Sitting tall again.",
                "chair-stand | Sit tall again. | Wait until both knees are straightened. | chair-stand-lean: says 'are straightened', not who does it: Wait until both knees are straightened.",
                "chair-stand | the front of your thighs | your quads | chair-stand-lean: 'quads' is a word of the trade, say front of the thigh: Feel it in your quads and your seat.",
                "chair-stand | Sit tall again. | Sit tall again, then look at the door, then at the wall, then at the hard floor. | chair-stand-lean: 17 words in one go, 16 is the most: Sit tall again, then look at the door, then at the wall, then at the hard floor.",
                "chair-stand | Stop if you feel light-headed, or | Stop if you feel light-headed, or sick, or hot, or cold, or weak, or worn, or faint, or | chair-stand-lean: 24 words in one go, 20 is the most: Stop if you feel light-headed, or sick, or hot, or cold, or weak, or worn, or faint, or your back or hip hurts",
                "t-raise | faults and cues: common practice | faults and cues: our own | t-raise: a claim names no source: Doses, tempo, trims, faults and cues: our own.",
                "palm-press-out | sets: 1 | sets: 9 | palm-press-towel-hold: the later dose is smaller than the first",
                "palm-press-out | least: 0.5 | least: 1.5 | palm-press-towel-roll: the trim makes no sense: Trim[part=ARMS, least=1.5]",
                "y-raise | raise: 95 | raise: 190 | y-raise-low: it raises the arm to 190°; 180° is the most",
                "towel-row | tilt: 34 | tilt: 70 | towel-row-hinge: 'arms hanging': the centre of mass is 0.210 H outside the feet",
                "march-in-place | flex: 100 | flex: 40 | march-seated-back: 'finish': something goes through the floor by 0.149 H",
                "push-up | at: [0.335 | at: [0.5 | push-seated-wall: 'arms straight': the right hand misses what it holds by 0.160 H",
                "overhead-press | axis: range | axis: stance | press-seated-back: stance to 'press-low-seated-back' does not ask less",
                "blade-squeeze | rises: [shoulder-in, wrist-back] | rises: [wrist-back] | squeeze-seated-back: lever to 'squeeze-lap' rises [shoulder-in, wrist-back], but says [wrist-back]",
            })
    void a_break_is_told_by_file_and_id(String movement, String from, String to, String flaw) {
        put(movement, from, to);

        List<String> told = flaws().stream().map(Flaw::toString).toList();

        assertTrue(told.contains(movement + ".yaml: " + flaw), () -> String.join("\n", told));
    }

    @Test
    void a_line_may_begin_with_the_part_that_moves() {
        put("chair-stand", "Sit tall again.", "Your right hand slides back. Sit tall again.");

        assertEquals(List.of(), flaws());
    }

    @Test
    void every_flaw_of_every_file_is_told_at_once() {
        put("bridge", "kind: strength", "kind: {");
        put("neck-turn", "rises: [ankle-down, shoulder]", "rises: [shoulder]");
        put("t-raise", "kind: strength", "kind: magic");

        assertEquals(
                List.of(
                        "bridge.yaml: line 5: while parsing a flow mapping; expected ',' or '}', but got <scalar>",
                        "neck-turn.yaml: neckturn-seated-back: position to 'neckturn-lying' rises [ankle-down, shoulder],"
                                + " but says [shoulder]",
                        "t-raise.yaml: t-raise: kind does not know 'magic'"),
                flaws().stream().map(Flaw::toString).toList());
    }

    @Test
    void a_broken_catalogue_stops_the_start_with_all_its_flaws() {
        put("t-raise", "kind: strength", "kind: magic");

        IllegalStateException stop = assertThrows(
                IllegalStateException.class, () -> Catalogues.read(folder).orStop());

        assertEquals("catalogue:\nt-raise.yaml: t-raise: kind does not know 'magic'", stop.getMessage());
        assertEquals(new CatalogueFigures(0, 0, 0, 1), CatalogueFigures.of(Catalogues.read(folder)));
    }

    private List<Flaw> flaws() {
        return switch (Catalogues.read(folder)) {
            case ReadCatalogue.Sound sound -> List.of();
            case ReadCatalogue.Broken broken -> broken.flaws();
        };
    }

    private void put(String movement, String from, String to) {
        String file = movement + ".yaml";
        try (InputStream shipped = Catalogues.class.getResourceAsStream("/newel/catalogue/" + file)) {
            String text = new String(shipped.readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(text.contains(from), () -> file + " has no '" + from + "'");
            int at = text.indexOf(from);
            Files.writeString(folder.resolve(file), text.substring(0, at) + to + text.substring(at + from.length()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
