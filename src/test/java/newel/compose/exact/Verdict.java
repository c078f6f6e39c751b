package newel.compose.exact;

import java.util.List;

/**
 * What a judge says.
 *
 * @param decided whether it came to an end within its time
 * @param ids of the best sequence; empty when there is none
 */
record Verdict(boolean decided, int score, List<String> ids) {
    static final Verdict IMPOSSIBLE = new Verdict(true, 0, List.of());
    static final Verdict OPEN = new Verdict(false, 0, List.of());

    static Verdict of(Answer answer) {
        return switch (answer) {
            case Answer.Found found ->
                new Verdict(
                        found.optimal(),
                        found.score(),
                        found.items().stream().map(Candidate::id).toList());
            case Answer.Impossible impossible -> IMPOSSIBLE;
            case Answer.Undecided undecided -> OPEN;
        };
    }
}
