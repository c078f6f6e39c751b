package newel.catalogue;

import java.util.List;
import java.util.stream.Stream;

/**
 * One thing at a time: a line of the set-up or the steps is short, and so is every sentence besides. Plain-language guides
 * ask for 10 to 15 words in a sentence and 20 at most (from memory); 16 for what is done line by line is a design choice.
 */
final class ShortLines implements Rule {
    private static final int MOST_IN_LINE = 16;
    private static final int MOST_IN_SENTENCE = 20;

    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return Stream.concat(
                tooLong(movement, movement.id(), Reading.sentences(movement.why()), MOST_IN_SENTENCE),
                movement.variants().stream().flatMap(variant -> flaws(movement, variant)));
    }

    private static Stream<Flaw> flaws(Movement movement, Variant variant) {
        Words words = variant.words();
        Stream<String> done = Stream.of(words.setUp(), words.steps()).flatMap(List::stream);
        Stream<String> told = Stream.of(words.breathing(), words.feel(), words.stop());
        return Stream.concat(
                tooLong(movement, variant.id(), done, MOST_IN_LINE),
                tooLong(movement, variant.id(), told.flatMap(Reading::sentences), MOST_IN_SENTENCE));
    }

    private static Stream<Flaw> tooLong(Movement movement, String id, Stream<String> lines, int most) {
        return lines.filter(line -> count(line) > most)
                .map(line -> Rule.flaw(
                        movement, id, "%d words in one go, %d is the most: %s".formatted(count(line), most, line)));
    }

    private static long count(String line) {
        return Reading.words(line).count();
    }
}
