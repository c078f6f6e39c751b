package newel.catalogue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Every variant has an id of its own in the whole catalogue; the file's name already makes movement ids unique. */
final class UniqueIds {
    static Stream<Flaw> flaws(List<Movement> movements) {
        Map<String, Integer> times = new HashMap<>();
        movements.stream()
                .flatMap(movement -> movement.variants().stream())
                .forEach(variant -> times.merge(variant.id(), 1, Integer::sum));
        return movements.stream()
                .flatMap(movement -> movement.variants().stream())
                .filter(variant -> times.get(variant.id()) > 1)
                .map(variant -> Rule.flaw(variant, "the id is used " + times.get(variant.id()) + " times"))
                .distinct();
    }

    private UniqueIds() {}
}
