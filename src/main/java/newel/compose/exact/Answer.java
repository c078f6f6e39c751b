package newel.compose.exact;

import java.util.List;

/** What came out. */
public sealed interface Answer {
    /**
     * @param items one a slot
     * @param bound no solution scores more than this
     */
    record Found(List<Candidate> items, int score, int bound) implements Answer {
        public Found {
            items = List.copyOf(items);
        }

        public boolean optimal() {
            return score == bound;
        }
    }

    /** Proved: nothing keeps all rules. */
    record Impossible() implements Answer {}

    /** The budget ended before a solution or a proof was there. */
    record Undecided() implements Answer {}
}
