package newel.compose.exact;

import java.util.Arrays;
import java.util.List;

/** The best solution so far; of two with equal values, the one whose ids come first. */
final class Incumbent {
    private long value = Tables.NEVER;
    private List<Candidate> items = List.of();

    long value() {
        return value;
    }

    boolean exists() {
        return !items.isEmpty();
    }

    List<Candidate> items() {
        return items;
    }

    /** @return whether it is better than what was there */
    boolean offer(Tables tables, int[] path, long worth) {
        if (worth < value || worth <= Tables.NEVER / 2) {
            return false;
        }
        List<Candidate> offered = items(tables, path);
        if (worth == value && compare(offered, items) >= 0) {
            return false;
        }
        value = worth;
        items = offered;
        return true;
    }

    private static List<Candidate> items(Tables tables, int[] path) {
        Candidate[] chosen = new Candidate[path.length];
        Arrays.setAll(chosen, s -> tables.columns[s].candidates[path[s]]);
        return List.of(chosen);
    }

    private static int compare(List<Candidate> a, List<Candidate> b) {
        for (int s = 0; s < a.size(); s++) {
            int order = a.get(s).id().compareTo(b.get(s).id());
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
