package newel.catalogue;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Links lead to variants of the same movement, never round in a circle, and hold the movement together. */
final class LinkedUp implements Rule {
    @Override
    public Stream<Flaw> flaws(Movement movement) {
        Map<String, Variant> byId = new LinkedHashMap<>();
        movement.variants().forEach(variant -> byId.put(variant.id(), variant));
        return Stream.of(
                        reference(movement, byId),
                        movement.variants().stream().flatMap(variant -> links(variant, byId)),
                        movement.variants().stream()
                                .filter(variant -> below(variant, byId).contains(variant.id()))
                                .map(variant -> Rule.flaw(variant, "its easier variants lead back to it")),
                        apart(movement, byId))
                .flatMap(flaws -> flaws);
    }

    private static Stream<Flaw> reference(Movement movement, Map<String, Variant> byId) {
        return byId.containsKey(movement.reference())
                ? Stream.empty()
                : Stream.of(Rule.flaw(
                        movement, movement.id(), "the reference '" + movement.reference() + "' is not a variant"));
    }

    private static Stream<Flaw> links(Variant variant, Map<String, Variant> byId) {
        return variant.easier().stream()
                .flatMap(link -> Stream.concat(
                        byId.containsKey(link.easier())
                                ? Stream.empty()
                                : Stream.of(Rule.flaw(variant, "the link to '" + link.easier() + "' leads nowhere")),
                        link.rises().stream()
                                .filter(rise -> !Rises.NAMES.contains(rise))
                                .map(rise -> Rule.flaw(
                                        variant,
                                        "the link to '" + link.easier() + "' does not know the rise '" + rise + "'"))));
    }

    private static Set<String> below(Variant from, Map<String, Variant> byId) {
        Set<String> reached = new HashSet<>();
        List<Variant> front = List.of(from);
        while (!front.isEmpty()) {
            front = front.stream()
                    .flatMap(variant -> variant.easier().stream())
                    .filter(link -> byId.containsKey(link.easier()) && reached.add(link.easier()))
                    .map(link -> byId.get(link.easier()))
                    .toList();
        }
        return reached;
    }

    private static Stream<Flaw> apart(Movement movement, Map<String, Variant> byId) {
        if (byId.isEmpty()) {
            return Stream.of(Rule.flaw(movement, movement.id(), "it has no variant"));
        }
        Set<String> joined = new HashSet<>(Set.of(byId.keySet().iterator().next()));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Variant variant : movement.variants()) {
                for (Link link : variant.easier()) {
                    boolean one = joined.contains(variant.id());
                    boolean other = joined.contains(link.easier());
                    grown |= one != other && joined.add(one ? link.easier() : variant.id());
                }
            }
        }
        return movement.variants().stream()
                .filter(variant -> !joined.contains(variant.id()))
                .map(variant -> Rule.flaw(variant, "no link joins it to the rest of the movement"));
    }
}
