package newel.compose.exact;

import java.util.List;
import java.util.Optional;

/** The next best candidate of another family for a slot, everything else as it is, and how many points it is behind. */
public record RunnerUp(Candidate candidate, int behind) {

    /** Looks for them all in one solution. */
    public static final class Search {
        private final Tables tables;
        private final int[] path;
        private final long value;

        public Search(Problem problem, List<Candidate> solution) {
            tables = Tables.of(problem, true);
            path = new int[solution.size()];
            for (int s = 0; s < path.length; s++) {
                path[s] = List.of(tables.columns[s].candidates).indexOf(solution.get(s));
            }
            value = Path.value(tables, path);
        }

        /** @param slot an index into the solution */
        public Optional<RunnerUp> in(int slot) {
            Column column = tables.columns[slot];
            int[] other = path.clone();
            long best = Tables.NEVER;
            int next = -1;
            for (int c = 0; c < column.size(); c++) {
                other[slot] = c;
                boolean another = column.family[c] != Families.NONE && column.family[c] != column.family[path[slot]];
                long worth = another ? Path.value(tables, other) : Tables.NEVER;
                if (worth > best) {
                    best = worth;
                    next = c;
                }
            }
            return next < 0
                    ? Optional.empty()
                    : Optional.of(new RunnerUp(column.candidates[next], Ties.points(value) - Ties.points(best)));
        }
    }
}
