package newel.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** One thing that must hold of a movement as the body does it; it lists every place where it does not. */
interface BodyRule {
    List<BodyRule> ALL =
            List.of(new InRange(), new OnBalance(), new WithinReach(), new NothingThrough(), new TrueLinks());

    /** @param doings the movement's variants by id, each solved once */
    Stream<Flaw> flaws(Movement movement, Map<String, Doing> doings);

    static Stream<Flaw> broken(Movement movement) {
        Map<String, Doing> doings = new LinkedHashMap<>();
        movement.variants().stream()
                .filter(variant -> !variant.keyPoses().isEmpty())
                .forEach(variant -> doings.put(variant.id(), Doing.of(variant)));
        return ALL.stream().flatMap(rule -> rule.flaws(movement, doings));
    }
}
