package newel.compose.exact;

import java.util.Comparator;
import java.util.List;

/** One slot's candidates as arrays, in the order of their ids. */
final class Column {
    final Candidate[] candidates;
    final long[] value;
    final int[] seconds;
    /** Index into states. */
    final int[] state;

    final int[] family;
    final long[] serving;
    final int[] standing;
    final int[] armsUp;
    /** The distinct states, as the problem numbers them. */
    final int[] states;

    final boolean fresh;
    final int pause;

    /** @param worth false when only feasibility counts */
    Column(Problem problem, int slot, List<Candidate> kept, Families families, boolean worth) {
        candidates = kept.stream().sorted(Comparator.comparing(Candidate::id)).toArray(Candidate[]::new);
        int n = candidates.length;
        value = new long[n];
        seconds = new int[n];
        state = new int[n];
        family = new int[n];
        serving = new long[n];
        standing = new int[n];
        armsUp = new int[n];
        states = kept.stream().mapToInt(Candidate::state).distinct().sorted().toArray();
        fresh = problem.slots().get(slot).fresh();
        pause = problem.slots().get(slot).pause();
        for (int c = 0; c < n; c++) {
            Candidate candidate = candidates[c];
            value[c] = worth
                    ? Ties.value(
                            candidate.points(),
                            slot,
                            candidate.id(),
                            problem.slots().size())
                    : 0;
            seconds[c] = grid(candidate.seconds());
            state[c] = java.util.Arrays.binarySearch(states, candidate.state());
            family[c] = families.index(candidate.family());
            standing[c] = candidate.standing();
            armsUp[c] = candidate.armsUp();
            serving[c] = Needs.serving(candidate.serves());
        }
    }

    int size() {
        return candidates.length;
    }

    static int grid(int seconds) {
        if (seconds % Problem.GRID != 0) {
            throw new IllegalArgumentException("not a multiple of " + Problem.GRID + ": " + seconds + " s");
        }
        return seconds / Problem.GRID;
    }
}
