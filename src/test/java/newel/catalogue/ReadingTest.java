package newel.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The formulas from counts, then the counts from text: counters disagree, so each is tested on its own. */
class ReadingTest {
    private static final double SAME = 0.001;

    /**
     * The platypus sentence of the encyclopaedia article on the formula (published 11.3); the least grade, −3.40 (npm
     * package flesch-kincaid 2.0.1).
     */
    @ParameterizedTest
    @CsvSource({"13, 1, 24, 11.265", "1, 1, 1, -3.40"})
    void the_grade_follows_kincaid(int words, int sentences, int syllables, double grade) {
        assertEquals(grade, new Reading(words, sentences, syllables, 0, 0).grade(), SAME);
    }

    /** The platypus sentence again (published 37.5); the published most, 121.22; the example of npm package flesch 2.0.1. */
    @ParameterizedTest
    @CsvSource({"13, 1, 24, 37.455", "1, 1, 1, 121.22", "6, 1, 6, 116.145"})
    void the_ease_follows_flesch(int words, int sentences, int syllables, double ease) {
        assertEquals(ease, new Reading(words, sentences, syllables, 0, 0).ease(), SAME);
    }

    /** One sentence with four: the example of npm package smog-formula 2.0.1. The others: McLaughlin's formula by hand. */
    @ParameterizedTest
    @CsvSource({
        "1, 4, 14.5546, true",
        "30, 0, 3.129, false",
        "30, 1, 4.172, false",
        "30, 9, 6.258, false",
        "30, 25, 8.344, false",
        "30, 95, 13.295, false",
        "30, 100, 13.559, false",
        "29, 0, 3.129, true"
    })
    void smog_follows_mclaughlin_and_is_an_estimate_under_thirty_sentences(
            int sentences, int longWords, double smog, boolean estimate) {
        Reading reading = new Reading(300, sentences, 400, longWords, 0);

        assertEquals(smog, reading.smog(), SAME);
        assertEquals(estimate, reading.smogIsEstimate());
    }

    /** Two complex words: the example of npm package gunning-fog 2.0.1. Four: the formula by hand. */
    @ParameterizedTest
    @CsvSource({"13, 2, 11.35385", "13, 4, 17.508"})
    void fog_follows_gunning(int words, int complex, double fog) {
        assertEquals(fog, new Reading(words, 1, 20, complex, complex).fog(), SAME);
    }

    @Test
    void lines_without_a_full_stop_count_as_sentences() {
        Reading reading = Reading.of(List.of("Sit tall", "Breathe out and stand up. Look ahead!", "Sit down slowly"));

        assertEquals(new Reading(12, 4, 14, 0, 0), reading);
    }

    /** Gunning's rule as we take it: an ending -es, -ed or -ing makes no word complex, a word of three syllables is. */
    @Test
    void a_word_that_is_long_only_by_its_ending_is_not_complex() {
        assertEquals(new Reading(3, 1, 9, 3, 1), Reading.of(List.of("Completed exercise finishing")));
    }

    @Test
    void the_hardest_line_is_named() {
        assertEquals(
                Optional.of("Comfortably readjust everything"),
                Reading.hardest(List.of("Sit down.", "Comfortably readjust everything", "Stand up.")));
        assertEquals(Optional.empty(), Reading.hardest(List.of()));
    }

    @ParameterizedTest
    @CsvSource({
        "breathe, 1",
        "squeeze, 1",
        "aches, 1",
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
        "sideways, 2",
        "everything, 3",
        "evening, 2"
    })
    void syllables_are_those_of_the_dictionary(String word, int syllables) {
        assertEquals(syllables, Syllables.of(word));
    }

    /** The first way of saying counts; many say "every" in two and "fire" and "hour" in one. */
    @ParameterizedTest
    @CsvSource({"every, 3", "fire, 2", "hour, 2"})
    void in_doubt_a_word_counts_longer(String word, int syllables) {
        assertEquals(syllables, Syllables.of(word));
    }

    @ParameterizedTest
    @CsvSource({"physiotherapist, 6", "shins, 1", "pinches, 2", "breastbone, 2"})
    void a_word_in_no_dictionary_is_counted_by_rule(String word, int syllables) {
        assertTrue(Spoken.syllables(word).isEmpty());
        assertEquals(syllables, Syllables.of(word));
    }

    @Test
    void only_what_dictionary_and_rule_get_wrong_is_counted_by_ear() {
        Syllables.BY_EAR.forEach((word, syllables) -> {
            assertNotEquals(syllables, Syllables.looked(word), word);
            assertEquals(syllables, Syllables.of(word));
        });
    }

    @ParameterizedTest
    @CsvSource({"0, 2", "7, 2", "10, 1", "11, 3", "17, 3", "20, 2", "45, 3", "70, 3", "77, 5", "100, 3", "130, 6"})
    void figures_count_as_they_are_said(String figures, int syllables) {
        assertEquals(syllables, Syllables.of(figures));
    }

    @Test
    void nothing_to_read_scores_nought() {
        Reading nothing = Reading.of(List.of("", " – "));

        assertEquals(new Reading(0, 0, 0, 0, 0), nothing);
        assertEquals(
                List.of(0.0, 0.0, 0.0, 0.0), List.of(nothing.grade(), nothing.ease(), nothing.fog(), nothing.smog()));
    }
}
