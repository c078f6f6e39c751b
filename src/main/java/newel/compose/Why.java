package newel.compose;

import java.util.List;

/**
 * Why an item stands where it does.
 *
 * @param lines what counted for it and how many points
 * @param runnerUp id of the next best variant of another movement for its place, everything else as it is; empty when
 *     nothing else would keep all rules
 * @param behind points that it is behind
 */
public record Why(String movement, List<Counted> lines, String runnerUp, int behind) {
    public Why {
        lines = List.copyOf(lines);
    }

    /** What a term counted for. */
    int points(Term term) {
        return lines.stream()
                .filter(line -> line.title().equals(term.title()))
                .mapToInt(Counted::points)
                .sum();
    }

    public record Counted(String title, int points) {}
}
