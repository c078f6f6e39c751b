package newel.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What the client reads asks for no more than the grade that plain words allow. */
final class PlainWords implements Rule {
    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return Stream.concat(
                tooHard(movement, movement.id(), List.of(movement.why())),
                movement.variants().stream()
                        .flatMap(variant -> tooHard(movement, variant.id(), lines(variant.words()))));
    }

    private static Stream<Flaw> tooHard(Movement movement, String id, List<String> lines) {
        double grade = Reading.of(lines).grade();
        return grade <= Reading.MOST
                ? Stream.empty()
                : Stream.of(Rule.flaw(
                        movement,
                        id,
                        String.format(
                                Locale.ROOT, "the words read at grade %.1f; %.0f is the most", grade, Reading.MOST)));
    }

    static List<String> lines(Words words) {
        List<String> lines = new ArrayList<>(words.setUp());
        lines.addAll(words.steps());
        lines.addAll(List.of(words.breathing(), words.feel(), words.stop()));
        return lines;
    }
}
