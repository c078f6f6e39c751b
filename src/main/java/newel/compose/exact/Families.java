package newel.compose.exact;

import java.util.HashMap;
import java.util.Map;

/** Numbers of the families of a problem, which stay when candidates are dropped. */
final class Families {
    static final int NONE = -1;

    private final Map<String, Integer> index = new HashMap<>();

    Families(Problem problem) {
        problem.slots().stream()
                .flatMap(slot -> slot.candidates().stream())
                .map(Candidate::family)
                .filter(family -> !family.isEmpty())
                .distinct()
                .sorted()
                .forEach(family -> index.put(family, index.size()));
    }

    int index(String family) {
        return index.getOrDefault(family, NONE);
    }

    int count() {
        return index.size();
    }
}
