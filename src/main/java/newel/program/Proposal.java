package newel.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.catalogue.Catalogue;
import newel.compose.Item;
import newel.compose.LeftOut;
import newel.compose.Session;
import newel.compose.Suiting;

/** What today's limits ask of a session: every item that no longer fits and what would take its place. */
public record Proposal(List<Replacement> replacements) {
    public Proposal {
        replacements = List.copyOf(replacements);
    }

    public static Proposal of(Catalogue catalogue, Session session, Suiting suiting) {
        Replacing replacing = new Replacing(catalogue, session, suiting);
        return new Proposal(session.items()
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
