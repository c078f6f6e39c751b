package newel.compose.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every sequence, one after another: the best score, and with tie weights the best sequence. */
final class Enumeration {
    private final Problem problem;
    private List<Candidate> best = List.of();
    private long bestValue = Long.MIN_VALUE;
    private int bestScore;

    private Enumeration(Problem problem) {
        this.problem = problem;
    }

    record Best(List<Candidate> items, int score) {}

    static Optional<Best> of(Problem problem) {
        Enumeration all = new Enumeration(problem);
        all.go(new ArrayList<>());
        return all.best.isEmpty() ? Optional.empty() : Optional.of(new Best(all.best, all.bestScore));
    }

    private void go(List<Candidate> so) {
        if (so.size() == problem.slots().size()) {
            judge(so);
            return;
        }
        for (Candidate c : problem.slots().get(so.size()).candidates()) {
            boolean twice = !c.family().isEmpty()
                    && so.stream().anyMatch(other -> other.family().equals(c.family()));
            if (!twice) {
                so.add(c);
                go(so);
                so.removeLast();
            }
        }
    }

    private void judge(List<Candidate> items) {
        int score = Rules.score(problem, items);
        long value = (long) score * Ties.POINT;
        for (int s = 0; s < items.size(); s++) {
            value += Ties.value(0, s, items.get(s).id(), items.size());
        }
        if (value > bestValue && Rules.broken(problem, items).isEmpty()) {
            bestValue = value;
            bestScore = score;
            best = List.copyOf(items);
        }
    }
}
