package newel.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One link with what it changes, computed from the poses of both ends.
 *
 * @param from the harder variant
 * @param fall what falls on the link's axis; empty when nothing does, which is a flaw
 */
public record LinkDemands(Variant from, Link link, Optional<Fall> fall, List<Rise> rises) {

    /** Of every link of a movement, in the order of its variants. */
    public static List<LinkDemands> of(Movement movement) {
        Map<String, Doing> doings = new LinkedHashMap<>();
        movement.variants().forEach(variant -> doings.put(variant.id(), Doing.of(variant)));
        return doings.values().stream()
                .flatMap(harder -> harder.variant().easier().stream()
                        .map(link -> of(movement, link, harder, doings.get(link.easier()))))
                .toList();
    }

    private static LinkDemands of(Movement movement, Link link, Doing harder, Doing easier) {
        return new LinkDemands(
                harder.variant(),
                link,
                new Falls(movement, harder, easier).on(link.axis()),
                Rises.between(harder, easier));
    }

    /** One line: the ends, the axis, what falls and what rises, each before and after. */
    @Override
    public String toString() {
        String line = from.id() + " → " + link.easier() + " (" + Measure.word(link.axis()) + "): "
                + fall.map(Fall::toString).orElse("nothing falls");
        return rises.isEmpty()
                ? line
                : line + "; rises "
                        + String.join(", ", rises.stream().map(Rise::toString).toList());
    }
}
