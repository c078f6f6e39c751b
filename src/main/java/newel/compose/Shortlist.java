package newel.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.catalogue.Trait;
import newel.catalogue.Variant;

/** Movements in the order in which they serve a slot, adapted as they are taken; each is taken once. */
final class Shortlist {
    private final Catalogue catalogue;
    private final Wish wish;
    private final Suiting suiting;
    private final Map<String, LeftOut> leftOut = new LinkedHashMap<>();
    private final List<String> taken = new ArrayList<>();

    Shortlist(Catalogue catalogue, Wish wish, Suiting suiting) {
        this.catalogue = catalogue;
        this.wish = wish;
        this.suiting = suiting;
    }

    /** The best movement of a kind that trains a purpose and fits, or nothing. */
    Optional<Item> best(Kind kind, Purpose purpose) {
        return first(
                movement -> movement.kind() == kind && movement.purposes().weight(purpose) >= 2,
                Comparator.comparingDouble(
                        movement -> -(movement.purposes().weight(purpose) + 2 * wish.serves(movement.purposes()))));
    }

    /** The best movement of a kind by goals alone. */
    Optional<Item> best(Kind kind, Predicate<Movement> which) {
        return first(
                movement -> movement.kind() == kind && which.test(movement),
                Comparator.comparingDouble(movement -> -wish.serves(movement.purposes())));
    }

    Optional<Item> named(String movement) {
        return first(each -> each.id().equals(movement), Comparator.comparing(Movement::id));
    }

    List<LeftOut> leftOut() {
        return leftOut.values().stream()
                .filter(out -> !taken.contains(out.movement()))
                .toList();
    }

    private Optional<Item> first(Predicate<Movement> which, Comparator<Movement> order) {
        List<Movement> wanted = catalogue.movements().stream()
                .filter(which)
                .filter(m -> !taken.contains(m.id()) && !goesToTheFloor(m))
                .sorted(order)
                .toList();
        for (Movement movement : wanted) {
            Variant variant = Wanted.of(catalogue, movement, wish.level());
            switch (suiting.adapt(variant)) {
                case Choice.Do chosen -> {
                    if (!taken.contains(chosen.variant().movement())) {
                        note(movement, chosen);
                        return Optional.of(item(movement, chosen));
                    }
                }
                case Choice.Leave left -> leftOut.put(movement.id(), new LeftOut(movement.id(), left.reasons()));
            }
        }
        return Optional.empty();
    }

    /** Practising the way to the floor has its own cautions and is for the instructor to add. */
    private static boolean goesToTheFloor(Movement movement) {
        return movement.variants().stream().anyMatch(variant -> variant.traits().contains(Trait.FLOOR_TRANSFER));
    }

    /** A movement that another one stands in for is named too, with why. */
    private void note(Movement movement, Choice.Do chosen) {
        if (!chosen.variant().movement().equals(movement.id())) {
            leftOut.put(movement.id(), new LeftOut(movement.id(), chosen.why()));
        }
    }

    private Item item(Movement wanted, Choice.Do chosen) {
        taken.add(chosen.variant().movement());
        Kind kind = catalogue.movementOf(chosen.variant()).kind();
        return new Item(
                chosen.variant().movement(),
                chosen.variant().id(),
                chosen.share(),
                Doses.of(chosen.variant(), kind, wish.level(), dose -> fits(chosen, dose)),
                chosen.how(),
                passed(wanted, chosen),
                chosen.why(),
                "");
    }

    private boolean fits(Choice.Do chosen, Dose dose) {
        return suiting.broken(chosen.variant(), chosen.share(), dose).isEmpty();
    }

    /** For another movement in its place, the one that was wanted. */
    private static List<String> passed(Movement wanted, Choice.Do chosen) {
        return chosen.how() == How.SUBSTITUTED ? List.of(wanted.reference()) : chosen.path();
    }
}
