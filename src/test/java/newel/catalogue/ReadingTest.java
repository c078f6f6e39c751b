package newel.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingTest {
    private static final double SAME = 0.001;

    /** Published: the platypus sentence of the encyclopaedia article on the formula, 11.3; the least grade, −3.40. */
    @ParameterizedTest
    @CsvSource({"13, 1, 24, 11.265", "1, 1, 1, -3.40"})
    void the_grade_follows_the_published_formula(int words, int sentences, int syllables, double grade) {
        assertEquals(grade, new Reading(words, sentences, syllables).grade(), SAME);
    }

    @Test
    void lines_without_a_full_stop_count_as_sentences() {
        Reading reading = Reading.of(List.of("Sit tall", "Breathe out and stand up. Look ahead!", "Sit down slowly"));

        assertEquals(new Reading(12, 4, 14), reading);
    }

    @ParameterizedTest
    @CsvSource({
        "breathe, 1",
        "squeeze, 1",
        "elbows, 2",
        "ankle, 2",
        "shoulder, 2",
        "towel, 2",
        "hand's, 1",
        "don’t, 1",
        "Counter, 2",
        "fingertips, 3",
        "together, 3",
        "slowly, 2",
        "sideways, 2"
    })
    void syllables_are_counted_by_ear(String word, int syllables) {
        assertEquals(syllables, Reading.syllables(word));
    }

    @Test
    void nothing_to_read_has_grade_nought() {
        assertEquals(0, Reading.of(List.of("", " – ")).grade(), SAME);
    }
}
