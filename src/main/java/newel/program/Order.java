package newel.program;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import newel.compose.BlockKind;
import newel.compose.Item;
import newel.compose.Session;

/** Which movements of two sessions stand at another place. */
final class Order {
    /**
     * Of the movements in both, the fewest that must move to come from one order to the other, and those that are now in
     * another kind of block.
     */
    static Set<String> moved(Session older, Session newer) {
        List<String> before = common(older, newer);
        List<String> after = common(newer, older);
        Set<String> moved = new HashSet<>(after);
        longestKept(before, after).forEach(moved::remove);
        after.stream()
                .filter(movement -> kind(older, movement) != kind(newer, movement))
                .forEach(moved::add);
        return moved;
    }

    private static List<String> common(Session of, Session and) {
        return of.items()
                .map(Item::movement)
                .filter(movement -> and.item(movement).isPresent())
                .toList();
    }

    private static BlockKind kind(Session session, String movement) {
        return session.blocks().stream()
                .filter(block ->
                        block.items().stream().anyMatch(item -> item.movement().equals(movement)))
                .findFirst()
                .orElseThrow()
                .kind();
    }

    /** Longest common subsequence; lengths[i][j] is that of what follows place i in one and j in the other. */
    private static Set<String> longestKept(List<String> a, List<String> b) {
        int[][] lengths = new int[a.size() + 1][b.size() + 1];
        for (int i = a.size() - 1; i >= 0; i--) {
            for (int j = b.size() - 1; j >= 0; j--) {
                lengths[i][j] = a.get(i).equals(b.get(j))
                        ? lengths[i + 1][j + 1] + 1
                        : Math.max(lengths[i + 1][j], lengths[i][j + 1]);
            }
        }
        return walked(a, b, lengths);
    }

    private static Set<String> walked(List<String> a, List<String> b, int[][] lengths) {
        Set<String> kept = new HashSet<>();
        int i = 0;
        int j = 0;
        while (i < a.size() && j < b.size()) {
            if (a.get(i).equals(b.get(j))) {
                kept.add(a.get(i++));
                j++;
            } else if (lengths[i + 1][j] >= lengths[i][j + 1]) {
                i++;
            } else {
                j++;
            }
        }
        return kept;
    }

    private Order() {}
}
