package newel.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Counts of a text, and what the published formulas make of them. Each line counts as a sentence at least, with or without
 * a full stop (design choice for lists); parts of a hyphened word count as words.
 *
 * @param longWords words of three syllables or more
 * @param complexWords long words that are not long only by an ending -es, -ed or -ing
 */
public record Reading(int words, int sentences, int syllables, int longWords, int complexWords) {
    /** What client words may ask at most; plain-language guides ask for grade 5 to 6. */
    public static final double MOST = 6;

    /** McLaughlin 1969 made the formula on 30 sentences; under that it is an estimate. */
    private static final int SMOG_SENTENCES = 30;

    private static final int LONG = 3;
    private static final Pattern SENTENCE_END = Pattern.compile("[.!?]+(\\s+|$)");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:['’][\\p{L}]+)*");
    private static final Pattern ENDING = Pattern.compile("(?:es|ed|ing)$");

    public static Reading of(List<String> lines) {
        List<String> sentences = lines.stream().flatMap(Reading::sentences).toList();
        List<String> words = sentences.stream().flatMap(Reading::words).toList();
        return new Reading(
                words.size(),
                sentences.size(),
                words.stream().mapToInt(Syllables::of).sum(),
                (int) words.stream().filter(Reading::isLong).count(),
                (int) words.stream().filter(Reading::isComplex).count());
    }

    /** The line that reads hardest by itself, if there is one. */
    public static Optional<String> hardest(List<String> lines) {
        return lines.stream()
                .max(Comparator.comparingDouble(line -> of(List.of(line)).grade()));
    }

    /** Flesch–Kincaid grade (Kincaid 1975, Navy Research Branch Report 8-75). */
    public double grade() {
        return words == 0 ? 0 : 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    /** Flesch reading ease (Flesch 1948): 60 to 70 plain, 90 and over very easy. */
    public double ease() {
        return words == 0 ? 0 : 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
    }

    /** Gunning's fog index (1952). */
    public double fog() {
        return words == 0 ? 0 : 0.4 * ((double) words / sentences + 100.0 * complexWords / words);
    }

    /** SMOG grade (McLaughlin 1969). */
    public double smog() {
        return words == 0 ? 0 : 1.0430 * Math.sqrt((double) longWords * SMOG_SENTENCES / sentences) + 3.1291;
    }

    public boolean smogIsEstimate() {
        return sentences < SMOG_SENTENCES;
    }

    static Stream<String> sentences(String line) {
        return SENTENCE_END
                .splitAsStream(line)
                .filter(text -> WORD.matcher(text).find());
    }

    static Stream<String> words(String text) {
        return WORD.matcher(text).results().map(MatchResult::group);
    }

    private static boolean isLong(String word) {
        return Syllables.of(word) >= LONG;
    }

    /** "Resting" says the same as "rest"; a word that is long only by its ending is not complex. */
    private static boolean isComplex(String word) {
        String stem = ENDING.matcher(word.toLowerCase(Locale.ROOT)).replaceFirst("");
        return isLong(word) && (stem.equals(word.toLowerCase(Locale.ROOT)) || isLong(stem));
    }
}
