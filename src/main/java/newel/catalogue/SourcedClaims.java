package newel.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every claim names where it is from: a paper or standard with its year or edition, or one of the plain marks. */
final class SourcedClaims implements Rule {
    private static final Pattern YEAR = Pattern.compile("\\b(?:19|20)\\d\\d\\b");
    private static final Pattern EDITION = Pattern.compile("\\b\\d+e, chapter \\d+");
    private static final List<String> MARKS = List.of("common practice", "from memory", "design choice", "statics");

    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return movement.claims().stream()
                .filter(claim -> !sourced(claim))
                .map(claim -> Rule.flaw(movement, movement.id(), "a claim names no source: " + claim));
    }

    private static boolean sourced(String claim) {
        String lower = claim.toLowerCase(Locale.ROOT);
        return YEAR.matcher(claim).find()
                || EDITION.matcher(claim).find()
                || MARKS.stream().anyMatch(lower::contains);
    }
}
