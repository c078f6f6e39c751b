package newel.compose.exact;

import java.util.List;

/**
 * A place in the sequence.
 *
 * @param fresh runs begin anew here: there was a break before it
 * @param pause seconds before it that lengthen a run of standing which goes on
 */
public record Slot(String name, List<Candidate> candidates, boolean fresh, int pause) {
    public Slot {
        candidates = List.copyOf(candidates);
    }
}
