package newel.program;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Kind;
import newel.catalogue.Variant;
import newel.compose.Choice;
import newel.compose.Doses;
import newel.compose.How;
import newel.compose.Item;
import newel.compose.Suiting;
import newel.limit.Limit;
import newel.limit.Reason;

/** Finds for one item after another what would take its place, no movement twice in a week. */
final class Replacing {
    private final Catalogue catalogue;
    private final Suiting suiting;
    private final Set<String> present;

    Replacing(Catalogue catalogue, List<Item> week, Suiting suiting) {
        this.catalogue = catalogue;
        this.suiting = suiting;
        this.present = new HashSet<>(week.stream().map(Item::movement).toList());
    }

    /** Nothing for an item that fits, or that the instructor keeps with a written reason and that breaks nothing new. */
    Optional<Replacement> replacement(Item item) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        List<Reason> broken = suiting.broken(variant, item.share(), item.dose());
        if (broken.isEmpty() || keptAllTheSame(item, variant, broken)) {
            return Optional.empty();
        }
        Optional<Item> after = instead(item, broken);
        after.ifPresent(taken -> present.add(taken.movement()));
        return Optional.of(new Replacement(item, texts(broken), after));
    }

    /** The reasons that were written against are those of the beginner's dose. */
    private boolean keptAllTheSame(Item item, Variant variant, List<Reason> broken) {
        List<Reason> known =
                suiting.broken(variant, item.share(), variant.dose().beginner());
        return !item.override().isEmpty()
                && item.why().containsAll(texts(known))
                && limits(known).containsAll(limits(broken));
    }

    private Optional<Item> instead(Item item, List<Reason> broken) {
        Variant now = catalogue.variant(item.variant()).orElseThrow();
        return switch (suiting.adapt(now)) {
            case Choice.Leave left -> Optional.empty();
            case Choice.Do chosen -> {
                String movement = chosen.variant().movement();
                boolean doubled = !movement.equals(item.movement()) && present.contains(movement);
                yield doubled ? Optional.empty() : Optional.of(item(item, chosen, texts(broken)));
            }
        };
    }

    /** A variant that stays as it was fits at a beginner's dose, so it was the dose that did not. */
    private Item item(Item before, Choice.Do chosen, List<String> broken) {
        boolean stays = chosen.how() == How.KEPT;
        return new Item(
                chosen.variant().movement(),
                chosen.variant().id(),
                chosen.share(),
                dose(before, chosen),
                stays ? How.SMALLER_DOSE : chosen.how(),
                chosen.how() == How.SUBSTITUTED ? List.of(before.variant()) : chosen.path(),
                stays ? broken : chosen.why(),
                "");
    }

    /** The same variant keeps its dose where that fits; another one never begins with more than its beginner's dose. */
    private Dose dose(Item before, Choice.Do chosen) {
        Variant variant = chosen.variant();
        Kind kind = catalogue.movementOf(variant).kind();
        boolean same = variant.id().equals(before.variant());
        if (same && suiting.broken(variant, chosen.share(), before.dose()).isEmpty()) {
            return before.dose();
        }
        return variant.movement().equals(before.movement())
                ? Doses.carried(before.dose(), variant, kind)
                : Doses.beginner(variant, kind);
    }

    private static Set<Limit> limits(List<Reason> reasons) {
        return reasons.stream().map(Reason::limit).collect(Collectors.toSet());
    }

    private static List<String> texts(List<Reason> reasons) {
        return reasons.stream().map(Reason::text).toList();
    }
}
