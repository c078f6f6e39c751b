package newel.catalogue;

import java.util.List;
import java.util.stream.Stream;

/** No variant lacks a word: one to four set-up lines, three to five steps, breathing, feel and a stop sign. */
final class WholeWords implements Rule {
    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return movement.variants().stream().flatMap(WholeWords::flaws);
    }

    private static Stream<Flaw> flaws(Variant variant) {
        Words words = variant.words();
        return Stream.of(
                        count(variant, "set-up lines", words.setUp(), 1, 4),
                        count(variant, "steps", words.steps(), 3, 5),
                        blank(variant, "name", variant.name()),
                        blank(variant, "breathing", words.breathing()),
                        blank(variant, "feel", words.feel()),
                        blank(variant, "stop", words.stop()))
                .flatMap(flaws -> flaws);
    }

    private static Stream<Flaw> count(Variant variant, String what, List<String> lines, int least, int most) {
        boolean whole =
                lines.size() >= least && lines.size() <= most && lines.stream().noneMatch(String::isBlank);
        return whole
                ? Stream.empty()
                : Stream.of(Rule.flaw(
                        variant, "it has " + lines.size() + " " + what + "; " + least + " to " + most + " are wanted"));
    }

    private static Stream<Flaw> blank(Variant variant, String what, String text) {
        return text.isBlank() ? Stream.of(Rule.flaw(variant, "the words lack '" + what + "'")) : Stream.empty();
    }
}
