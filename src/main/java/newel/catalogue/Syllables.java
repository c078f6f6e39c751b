package newel.catalogue;

import eu.crydee.syllablecounter.SyllableCounter;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** Counts the syllables of a word: by the dictionary, else by rule; by ear where both are wrong. Figures as they are said. */
final class Syllables {
    private static final SyllableCounter RULE = new SyllableCounter();

    /** Words that are in no dictionary and that the rule miscounts. */
    static final Map<String, Integer> BY_EAR = Map.of("metre", 2, "litre", 2);

    /** "Zero" to "nineteen"; the tens after them have two syllables, but for seventy. */
    private static final int[] SAID = {2, 1, 1, 1, 1, 1, 1, 2, 1, 1, 1, 3, 1, 2, 2, 2, 2, 3, 2, 2};

    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}");
    private static final Pattern POSSESSIVE = Pattern.compile("'s?$|'(?=[a-z])");

    /** The catalogue says the same few hundred words over and over. */
    private static final Map<String, Integer> COUNTED = new ConcurrentHashMap<>();

    static int of(String word) {
        return COUNTED.computeIfAbsent(word.toLowerCase(Locale.ROOT).replace('’', '\''), Syllables::counted);
    }

    private static int counted(String lower) {
        return NUMBER.matcher(lower).matches()
                ? number(Integer.parseInt(lower))
                : BY_EAR.getOrDefault(lower, looked(lower));
    }

    /** What the dictionary or else the rule says. */
    static int looked(String lower) {
        String bare = POSSESSIVE.matcher(lower).replaceAll("");
        return Spoken.syllables(lower)
                .orElseGet(() -> Spoken.syllables(bare).orElseGet(() -> Math.max(1, RULE.count(bare))));
    }

    private static int number(int number) {
        if (number >= 100) {
            return SAID[number / 100] + 2 + (number % 100 == 0 ? 0 : 1 + number(number % 100));
        }
        if (number < SAID.length) {
            return SAID[number];
        }
        return (number / 10 == 7 ? 3 : 2) + (number % 10 == 0 ? 0 : SAID[number % 10]);
    }

    private Syllables() {}
}
