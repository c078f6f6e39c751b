package newel.compose;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.compose.exact.Conflict;

/**
 * Movements that are to be in it and of which nothing fits; they are given up before anything is composed. The reasons say
 * more than whose limits they are.
 *
 * @param pools by the limitations that are looked away from
 */
record Unfit(Catalogue catalogue, Suiting suiting, Function<Set<String>, Pool> pools) {
    private static final String BY_HAND = "It is never composed: add it by hand where it is safe";

    Optional<GivenUp> of(String movement) {
        if (fits(movement, Set.of())) {
            return Optional.empty();
        }
        Movement pinned = catalogue.movement(movement).orElseThrow();
        List<String> conflict = new ArrayList<>(fits(movement, all()) ? against(pinned) : List.of(BY_HAND));
        conflict.add(Asking.in(pinned));
        return Optional.of(new GivenUp(Asking.in(pinned), conflict));
    }

    private List<String> against(Movement pinned) {
        List<String> reasons = pools.apply(Set.of()).reasons(pinned);
        List<String> against = new ArrayList<>();
        for (String whose : Conflict.smallest(suiting.limitations(), some -> fits(pinned.id(), allBut(some)))) {
            List<String> said =
                    reasons.stream().filter(reason -> reason.contains(whose)).toList();
            against.addAll(said.isEmpty() ? List.of(whose) : said);
        }
        return against;
    }

    private boolean fits(String movement, Set<String> lifted) {
        return pools.apply(lifted).options().stream()
                .anyMatch(option -> option.movement().id().equals(movement));
    }

    private Set<String> all() {
        return Set.copyOf(suiting.limitations());
    }

    private Set<String> allBut(List<String> some) {
        Set<String> others = new HashSet<>(suiting.limitations());
        others.removeAll(Set.copyOf(some));
        return others;
    }
}
