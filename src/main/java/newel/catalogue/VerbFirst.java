package newel.catalogue;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every line tells what to do: it begins with a verb, or with the part that does it, and nothing in it "is done". */
final class VerbFirst implements Rule {
    private static final Set<String> VERBS = Set.copyOf(WordList.read("verbs.txt"));
    private static final Set<String> PARTS = Set.copyOf(WordList.read("parts.txt"));
    private static final Set<String> WHICH = Set.of("right", "left", "both", "your", "one", "other");

    /** Three letters at least before the ending, which leaves out "is red"; being tired is a state, nothing that is done. */
    private static final Pattern PASSIVE = Pattern.compile(
            "\\b(?:is|are|be|was|were|been|being)\\s+(?!tired\\b)\\w{3,}ed\\b", Pattern.CASE_INSENSITIVE);

    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return movement.variants().stream().flatMap(VerbFirst::flaws);
    }

    private static Stream<Flaw> flaws(Variant variant) {
        return PlainWords.lines(variant.words()).stream().flatMap(line -> flaws(variant, line));
    }

    private static Stream<Flaw> flaws(Variant variant, String line) {
        Stream<Flaw> begins =
                begins(line) ? Stream.empty() : Stream.of(Rule.flaw(variant, "begins with no verb or part: " + line));
        Stream<Flaw> passive = PASSIVE.matcher(line)
                .results()
                .map(match -> Rule.flaw(variant, "says '" + match.group() + "', not who does it: " + line));
        return Stream.concat(begins, passive);
    }

    /** A blank line is another rule's affair. */
    private static boolean begins(String line) {
        Optional<String> word = Reading.words(line)
                .map(each -> each.toLowerCase(Locale.ROOT))
                .filter(each -> !WHICH.contains(each))
                .findFirst();
        return word.isEmpty() || VERBS.contains(word.get()) || PARTS.contains(word.get());
    }
}
