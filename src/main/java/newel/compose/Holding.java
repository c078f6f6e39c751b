package newel.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import newel.compose.exact.Answer;
import newel.compose.exact.Budget;
import newel.compose.exact.Conflict;
import newel.compose.exact.Feasibility;
import newel.compose.exact.Problem;
import newel.compose.exact.Solver;

/**
 * Solves under all rules; where they cannot hold together, names a smallest conflict, gives up the wish in it that costs
 * least, and solves again.
 */
final class Holding {
    private static final long SOLVING = Budget.LARGE / 4;
    private static final long ONE_CHECK = Budget.INTERACTIVE / 8;

    /** A problem made of rules. */
    record Attempt(Assembly assembly, Problem problem) {}

    /** @param answer nothing where it was refused */
    record Held(Attempt attempt, Answer.Found answer, List<GivenUp> givenUp, List<String> refused) {}

    private final Function<List<Rule>, Attempt> making;
    private final List<GivenUp> givenUp = new ArrayList<>();

    Holding(Function<List<Rule>, Attempt> making) {
        this.making = making;
    }

    Held hold(List<Rule> rules) {
        List<Rule> active = new ArrayList<>(rules);
        unserved(active);
        while (true) {
            Attempt attempt = making.apply(active);
            if (Solver.solve(attempt.problem(), new Budget(SOLVING)) instanceof Answer.Found found) {
                return new Held(attempt, found, givenUp, List.of());
            }
            List<Rule> conflict = Conflict.smallest(active, this::mayHold);
            List<Rule> among = conflict.isEmpty() ? active : conflict;
            Rule cheapest =
                    among.stream().min(Comparator.comparingInt(Rule::price)).orElse(null);
            if (cheapest == null || cheapest.price() == Rule.NEVER) {
                return new Held(attempt, null, givenUp, words(conflict));
            }
            givenUp.add(new GivenUp(cheapest.words(), words(conflict)));
            active.remove(cheapest);
        }
    }

    private boolean mayHold(List<Rule> rules) {
        return !(Feasibility.find(making.apply(rules).problem(), new Budget(ONE_CHECK)) instanceof Answer.Impossible);
    }

    /** What nothing that fits can serve is given up at once, without a search. */
    private void unserved(List<Rule> active) {
        Attempt attempt = making.apply(active);
        for (Rule rule : List.copyOf(active)) {
            if (rule instanceof Rule.Asked asked && attempt.assembly().serving(asked) < asked.least()) {
                List<Rule> limits = new ArrayList<>(active);
                limits.removeIf(each -> each.price() != Rule.NEVER);
                limits.add(asked);
                List<Rule> conflict =
                        Conflict.smallest(limits, rules -> !rules.contains(asked) || serves(rules, asked));
                givenUp.add(new GivenUp(asked.words(), words(conflict)));
                active.remove(asked);
            }
        }
    }

    private boolean serves(List<Rule> rules, Rule.Asked asked) {
        return making.apply(rules).assembly().serving(asked) >= asked.least();
    }

    private static List<String> words(List<Rule> rules) {
        return rules.stream().map(Rule::words).toList();
    }
}
