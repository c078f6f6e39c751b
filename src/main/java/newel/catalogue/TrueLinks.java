package newel.catalogue;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A link tells the truth: on the axis that it names the easier variant asks strictly less, and whatever it asks more of is
 * said.
 */
final class TrueLinks implements BodyRule {
    @Override
    public Stream<Flaw> flaws(Movement movement, Map<String, Doing> doings) {
        return doings.values().stream()
                .flatMap(doing -> doing.variant().easier().stream()
                        .filter(link -> doings.containsKey(link.easier()))
                        .flatMap(link -> flaws(movement, link, doing, doings.get(link.easier()))));
    }

    private static Stream<Flaw> flaws(Movement movement, Link link, Doing harder, Doing easier) {
        Stream.Builder<Flaw> flaws = Stream.builder();
        String to = Measure.word(link.axis()) + " to '" + link.easier() + "' ";
        if (new Falls(movement, harder, easier).on(link.axis()).isEmpty()) {
            flaws.add(Rule.flaw(harder.variant(), to + "does not ask less"));
        }
        if (easier.variant().effort() > harder.variant().effort()) {
            flaws.add(Rule.flaw(harder.variant(), to + "asks more effort"));
        }
        Set<String> rises = Rises.names(Rises.between(harder, easier));
        if (!rises.equals(new TreeSet<>(link.rises()))) {
            flaws.add(Rule.flaw(harder.variant(), to + "rises " + rises + ", but says " + link.rises()));
        }
        return flaws.build();
    }
}
