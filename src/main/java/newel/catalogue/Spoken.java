package newel.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/**
 * How many syllables a word is spoken with, from the CMU Pronouncing Dictionary 0.4 as FreeTTS carries it. A line is the
 * word, one letter for its part of speech, a tab, and its sounds; the first line of a word counts. So "every" has 3 and
 * "fire" and "hour" have 2, although many say one less: in doubt a text reads harder, never easier (design choice).
 */
final class Spoken {
    private static final String DICTIONARY = "/com/sun/speech/freetts/en/us/cmudict04_compiled.txt";
    /** Every vowel sound begins with one of these letters, and no consonant does. */
    private static final String VOWELS = "aeiou";

    private static final Map<String, Integer> WORDS = read();

    static OptionalInt syllables(String lower) {
        Integer syllables = WORDS.get(lower);
        return syllables == null ? OptionalInt.empty() : OptionalInt.of(syllables);
    }

    private static Map<String, Integer> read() {
        String lines = text();
        Map<String, Integer> words = HashMap.newHashMap(110_000);
        int from = 0;
        for (int end = lines.indexOf('\n'); end >= 0; end = lines.indexOf('\n', from)) {
            int tab = lines.indexOf('\t', from, end);
            if (tab > from) {
                words.putIfAbsent(lines.substring(from, tab - 1).toLowerCase(Locale.ROOT), vowels(lines, tab, end));
            }
            from = end + 1;
        }
        return words;
    }

    private static String text() {
        try (InputStream dictionary = Spoken.class.getResourceAsStream(DICTIONARY)) {
            return new String(dictionary.readAllBytes(), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Vowel sounds between the tab and the end of the line. */
    private static int vowels(String lines, int tab, int end) {
        int vowels = 0;
        for (int at = tab + 1; at < end; at++) {
            boolean begins = lines.charAt(at - 1) <= ' ';
            if (begins && VOWELS.indexOf(lines.charAt(at)) >= 0) {
                vowels++;
            }
        }
        return vowels;
    }

    private Spoken() {}
}
