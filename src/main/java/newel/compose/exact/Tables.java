package newel.compose.exact;

import java.util.Arrays;
import java.util.List;

/** A problem with the candidates that are still in play, as arrays, and what the slots after each one can bring. */
final class Tables {
    static final long NEVER = Long.MIN_VALUE / 8;

    final Problem problem;
    final Families families;
    final Column[] columns;
    final Shared shared;
    final long needs;
    final int least;
    final int most;
    /** Penalty in tie units and grid seconds on entering slot s, from local state p to local state q. */
    final long[][][] penalty;

    final int[][][] between;
    /** Fewest and most grid seconds of the slots after s, coming from local state q. */
    final int[][] leastAfter;

    final int[][] mostAfter;
    /** What the slots from s on can serve at most; one entry beyond the last. */
    final long[] possible;

    final boolean worth;

    Tables(Problem problem, Families families, List<List<Candidate>> kept, boolean worth) {
        this.problem = problem;
        this.families = families;
        this.worth = worth;
        int slots = problem.slots().size();
        columns = new Column[slots];
        Arrays.setAll(columns, s -> new Column(problem, s, kept.get(s), families, worth));
        shared = new Shared(columns, families.count());
        needs = Needs.of(problem.demands());
        least = Math.ceilDiv(problem.window().least(), Problem.GRID);
        most = Math.floorDiv(problem.window().most(), Problem.GRID);
        penalty = new long[slots][][];
        between = new int[slots][][];
        leastAfter = new int[slots][];
        mostAfter = new int[slots][];
        possible = new long[slots + 1];
        for (int s = slots - 1; s >= 0; s--) {
            possible[s] = Needs.more(possible[s + 1], anyServing(columns[s]));
            neighbours(s);
            rest(s);
        }
    }

    static Tables of(Problem problem, boolean worth) {
        return new Tables(
                problem,
                new Families(problem),
                problem.slots().stream().map(Slot::candidates).toList(),
                worth);
    }

    int slots() {
        return columns.length;
    }

    int candidates() {
        return Arrays.stream(columns).mapToInt(Column::size).sum();
    }

    /** Nothing can come out where a slot is empty or a demand is out of reach. */
    boolean hopeless() {
        return Arrays.stream(columns).anyMatch(column -> column.size() == 0) || Needs.beyond(needs, possible[0]);
    }

    private static long anyServing(Column column) {
        return Arrays.stream(column.serving).reduce(0, (a, b) -> a | b);
    }

    private void neighbours(int s) {
        if (s == 0) {
            return;
        }
        int[] from = columns[s - 1].states;
        int[] to = columns[s].states;
        penalty[s] = new long[from.length][to.length];
        between[s] = new int[from.length][to.length];
        for (int p = 0; p < from.length; p++) {
            for (int q = 0; q < to.length; q++) {
                int points = problem.transitions().penalty(s, from[p], to[q]);
                boolean never = points >= Transitions.FORBIDDEN;
                penalty[s][p][q] = never ? -NEVER : worth ? points * Ties.POINT : 0;
                between[s][p][q] = Column.grid(problem.transitions().seconds(s, from[p], to[q]));
            }
        }
    }

    private void rest(int s) {
        int states = columns[s].states.length;
        leastAfter[s] = new int[states];
        mostAfter[s] = new int[states];
        if (s == slots() - 1) {
            return;
        }
        Column next = columns[s + 1];
        for (int q = 0; q < states; q++) {
            leastAfter[s][q] = Integer.MAX_VALUE / 4;
            mostAfter[s][q] = Integer.MIN_VALUE / 4;
            for (int c = 0; c < next.size(); c++) {
                int to = next.state[c];
                if (penalty[s + 1][q][to] < -NEVER) {
                    int taken = next.seconds[c] + between[s + 1][q][to];
                    leastAfter[s][q] = Math.min(leastAfter[s][q], taken + leastAfter[s + 1][to]);
                    mostAfter[s][q] = Math.max(mostAfter[s][q], taken + mostAfter[s + 1][to]);
                }
            }
        }
    }
}
