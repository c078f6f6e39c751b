package newel.compose;

import java.util.List;

/**
 * A wish that could not be held.
 *
 * @param wish what was given up
 * @param conflict the smallest set of wishes and limits found that cannot hold together; the wish is among them;
 *     one sentence instead where that was not decided
 */
public record GivenUp(String wish, List<String> conflict) {
    public GivenUp {
        conflict = List.copyOf(conflict);
    }
}
