package newel.catalogue;

import eu.crydee.syllablecounter.SyllableCounter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Counts of a text and the school grade that can read it. Each line counts as a sentence at least, with or without a full
 * stop (design choice for lists).
 */
public record Reading(int words, int sentences, int syllables) {
    /** What client words may ask at most; plain-language guides ask for grade 5 to 6. */
    public static final double MOST = 6;

    private static final SyllableCounter SYLLABLES = new SyllableCounter();
    private static final Pattern SENTENCE_END = Pattern.compile("[.!?]+(\\s+|$)");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:['’][\\p{L}]+)*");

    /** Words that the rules miscount, counted by ear. */
    private static final Map<Integer, Set<String>> BY_EAR = Map.of(
            1,
            Set.of(
                    "aches", "clothes", "comes", "cool", "cranes", "crossed", "feel", "locked", "panes", "pulled",
                    "pursed", "pushed", "raised", "rolled", "sides", "slides", "squeeze", "stool", "used", "times"),
            2,
            Set.of("ankle", "circle", "forehead", "freely", "metre", "sideways", "squeezing", "tingle", "something"));

    public static Reading of(List<String> lines) {
        List<String> sentences = lines.stream()
                .flatMap(SENTENCE_END::splitAsStream)
                .filter(text -> WORD.matcher(text).find())
                .toList();
        List<String> words = sentences.stream().flatMap(Reading::words).toList();
        return new Reading(
                words.size(),
                sentences.size(),
                words.stream().mapToInt(Reading::syllables).sum());
    }

    /** Flesch–Kincaid grade (Kincaid 1975, Navy Research Branch Report 8-75). */
    public double grade() {
        return words == 0 ? 0 : 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    static int syllables(String word) {
        String lower = word.toLowerCase(Locale.ROOT).replace('’', '\'').replaceAll("'s?$|'(?=[a-z])", "");
        return BY_EAR.entrySet().stream()
                .filter(entry -> entry.getValue().contains(lower))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseGet(() -> Math.max(1, SYLLABLES.count(lower)));
    }

    private static Stream<String> words(String sentence) {
        return WORD.matcher(sentence).results().map(MatchResult::group);
    }
}
