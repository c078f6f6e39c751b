package newel.program;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import newel.catalogue.Catalogue;
import newel.catalogue.Variant;
import newel.compose.Choice;
import newel.compose.How;
import newel.compose.Item;
import newel.compose.LeftOut;
import newel.compose.Session;
import newel.compose.Suiting;
import newel.limit.Reason;

/** What today's limits ask of a session: every item that no longer fits and what would take its place. */
public record Proposal(List<Replacement> replacements) {
    public Proposal {
        replacements = List.copyOf(replacements);
    }

    /** An item that the instructor keeps with a written reason is shown again only when it breaks something new. */
    public static Proposal of(Catalogue catalogue, Session session, Suiting suiting) {
        List<Replacement> replacements = new ArrayList<>();
        Set<String> present = new HashSet<>(session.items().map(Item::movement).toList());
        for (Item item : session.items().toList()) {
            Variant variant = catalogue.variant(item.variant()).orElseThrow();
            List<String> broken = suiting.broken(variant, item.share()).stream()
                    .map(Reason::text)
                    .toList();
            if (!broken.isEmpty() && !(!item.override().isEmpty() && item.why().containsAll(broken))) {
                Optional<Item> after = instead(item, suiting.adapt(variant), present);
                after.ifPresent(taken -> present.add(taken.movement()));
                replacements.add(new Replacement(item, broken, after));
            }
        }
        return new Proposal(replacements);
    }

    private static Optional<Item> instead(Item item, Choice choice, Set<String> present) {
        return switch (choice) {
            case Choice.Leave left -> Optional.empty();
            case Choice.Do chosen -> {
                boolean same = chosen.variant().movement().equals(item.movement());
                boolean doubled = !same && present.contains(chosen.variant().movement());
                yield doubled ? Optional.empty() : Optional.of(item(item, chosen, same));
            }
        };
    }

    /** The same movement keeps its dose where the dose is of the same form; another one begins at its beginner's dose. */
    private static Item item(Item before, Choice.Do chosen, boolean same) {
        var beginner = chosen.variant().dose().beginner();
        boolean sameForm = (before.dose().repetitions() == 0) == (beginner.repetitions() == 0)
                && (before.dose().seconds() == 0) == (beginner.seconds() == 0);
        return new Item(
                chosen.variant().movement(),
                chosen.variant().id(),
                chosen.share(),
                same && sameForm ? before.dose() : beginner,
                chosen.how(),
                chosen.how() == How.SUBSTITUTED ? List.of(before.variant()) : chosen.path(),
                chosen.why(),
                "");
    }

    public boolean nothing() {
        return replacements.isEmpty();
    }

    /** The session with every replacement made. */
    public Session applied(Session session) {
        return session.map(
                items -> items.stream().flatMap(item -> now(item).stream()).toList());
    }

    private Optional<Item> now(Item item) {
        return replacements.stream()
                .filter(each -> each.before().movement().equals(item.movement()))
                .findFirst()
                .map(Replacement::after)
                .orElse(Optional.of(item));
    }

    /** What has to go altogether, beside what was left out before. */
    public List<LeftOut> leftOut(List<LeftOut> before) {
        List<LeftOut> all = new ArrayList<>(before);
        for (Replacement each : replacements) {
            if (each.after().isEmpty()
                    || !each.after().get().movement().equals(each.before().movement())) {
                all.removeIf(out -> out.movement().equals(each.before().movement()));
                all.add(new LeftOut(each.before().movement(), each.reasons()));
            }
        }
        return all;
    }
}
