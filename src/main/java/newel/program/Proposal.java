package newel.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.catalogue.Catalogue;
import newel.compose.Item;
import newel.compose.LeftOut;
import newel.compose.Session;
import newel.compose.Suiting;

/** What today's limits ask of a week: every item that no longer fits and what would take its place. */
public record Proposal(List<Replacement> replacements) {
    public Proposal {
        replacements = List.copyOf(replacements);
    }

    public static Proposal of(Catalogue catalogue, Version version, Suiting suiting) {
        Replacing replacing = new Replacing(catalogue, version.items(), suiting);
        return new Proposal(version.items().stream()
                .map(replacing::replacement)
                .flatMap(Optional::stream)
                .toList());
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
                .filter(each -> sameAs(each.before(), item))
                .findFirst()
                .map(Replacement::after)
                .orElse(Optional.of(item));
    }

    private static boolean sameAs(Item a, Item b) {
        return a.variant().equals(b.variant())
                && a.share().equals(b.share())
                && a.dose().equals(b.dose());
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
