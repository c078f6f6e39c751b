package newel.store;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What somebody typed to search for, as words. Only letters and digits are kept, and each word is asked for in quotes as
 * the beginning of a word, so that nothing typed is ever read as the language of the search.
 */
record SearchWords(List<String> words) {
    /** More than anybody types to find a movement (design choice). */
    private static final int MOST = 12;

    private static final int LONGEST = 40;
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{M}\\p{N}]+");

    static SearchWords of(String typed) {
        return new SearchWords(BETWEEN.splitAsStream(typed)
                .filter(word -> !word.isEmpty())
                .map(word -> word.substring(0, Math.min(word.length(), LONGEST)))
                .limit(MOST)
                .toList());
    }

    boolean none() {
        return words.isEmpty();
    }

    /** All words must be there. */
    String match() {
        return words.stream().map(word -> "\"" + word + "\"*").collect(Collectors.joining(" "));
    }
}
