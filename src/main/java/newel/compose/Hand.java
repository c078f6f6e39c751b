package newel.compose;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import newel.catalogue.Purpose;

/**
 * What the instructor has decided; composing works around it.
 *
 * @param kept items that stay exactly as they are, each with the part that it stands in
 * @param pinned movements that have to be in it, in whatever form is best
 * @param banned movements that stay out
 * @param moreOf what to do more of
 */
public record Hand(Map<Item, BlockKind> kept, Set<String> pinned, Set<String> banned, Set<Purpose> moreOf) {
    public static final Hand FREE = new Hand(Map.of(), Set.of(), Set.of(), Set.of());

    public Hand {
        kept = Map.copyOf(kept);
        pinned = Set.copyOf(pinned);
        banned = Set.copyOf(banned);
        moreOf = Set.copyOf(moreOf);
    }

    /** What she put into a session herself, or keeps although it does not fit. */
    public static Hand in(Session session) {
        Map<Item, BlockKind> kept = new LinkedHashMap<>();
        for (Block block : session.blocks()) {
            for (Item item : block.items()) {
                if (item.how() == How.CHOSEN || !item.override().isEmpty()) {
                    kept.put(item, block.kind());
                }
            }
        }
        return new Hand(kept, Set.of(), Set.of(), Set.of());
    }

    public Hand pinning(Set<String> movements) {
        return new Hand(kept, movements, banned, moreOf);
    }

    public Hand banning(Set<String> movements) {
        return new Hand(kept, pinned, movements, moreOf);
    }

    public Hand wantingMoreOf(Set<Purpose> purposes) {
        return new Hand(kept, pinned, banned, purposes);
    }

    /** What she kept in a session, beside what is decided here; what is to stay out is not kept. */
    public Hand keeping(Session session) {
        Map<Item, BlockKind> keeps = new LinkedHashMap<>(in(session).kept());
        keeps.keySet().removeIf(item -> banned.contains(item.movement()));
        return new Hand(keeps, pinned, banned, moreOf);
    }

    /** Whether a movement is to stay in it. */
    boolean holds(String movement) {
        return pinned.contains(movement)
                || kept.keySet().stream().anyMatch(item -> item.movement().equals(movement));
    }
}
