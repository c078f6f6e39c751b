package newel.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import newel.compose.exact.Answer;
import newel.compose.exact.Budget;
import newel.compose.exact.Conflict;
import newel.compose.exact.Feasibility;
import newel.compose.exact.Solver;

/**
 * Solves under all rules; where they cannot hold together, names a smallest conflict, gives up the wish in it that costs
 * least, and solves again.
 */
final class Holding {
    private static final long SOLVING = 4 * Budget.INTERACTIVE;
    private static final long ONE_CHECK = Budget.INTERACTIVE / 8;

    /** Where the budget ended before anything was found or ruled out. */
    private static final List<String> UNDECIDED =
            List.of("Whether it can be held was not decided within the work allowed");

    /** @param answer nothing where it was refused */
    record Held(Assembly assembly, Answer.Found answer, List<GivenUp> givenUp, List<String> refused) {}

    private final Function<List<Rule>, Assembly> making;
    private final List<GivenUp> givenUp = new ArrayList<>();

    Holding(Function<List<Rule>, Assembly> making) {
        this.making = making;
    }

    Held hold(List<Rule> rules) {
        List<Rule> active = new ArrayList<>(rules);
        Assembly attempt = making.apply(active);
        if (giveUpUnserved(attempt, active)) {
            attempt = making.apply(active);
        }
        while (true) {
            if (solved(attempt) instanceof Answer.Found found) {
                return new Held(attempt, found, givenUp, List.of());
            }
            List<Rule> conflict = Conflict.smallest(active, this::mayHold);
            List<Rule> among = conflict.isEmpty() ? active : conflict;
            Rule cheapest =
                    among.stream().min(Comparator.comparingInt(Rule::price)).orElse(null);
            if (cheapest == null || cheapest.price() == Rule.NEVER) {
                return new Held(attempt, null, givenUp, words(conflict));
            }
            givenUp.add(new GivenUp(cheapest.words(), conflict.isEmpty() ? UNDECIDED : words(conflict)));
            active.remove(cheapest);
            attempt = making.apply(active);
        }
    }

    private static Answer solved(Assembly attempt) {
        return attempt.empty() ? new Answer.Impossible() : Solver.solve(attempt.problem(), new Budget(SOLVING));
    }

    private boolean mayHold(List<Rule> rules) {
        Assembly attempt = making.apply(rules);
        return !attempt.empty()
                && !(Feasibility.find(attempt.problem(), new Budget(ONE_CHECK)) instanceof Answer.Impossible);
    }

    /** What nothing that fits can serve is given up at once, without a search. */
    private boolean giveUpUnserved(Assembly attempt, List<Rule> active) {
        List<Rule> unserved = active.stream()
                .filter(rule -> rule instanceof Rule.Asked asked && !attempt.served(asked))
                .toList();
        for (Rule wish : unserved) {
            List<Rule> among = new ArrayList<>(active);
            among.removeIf(each -> each.price() != Rule.NEVER);
            among.add(wish);
            List<Rule> conflict = Conflict.smallest(among, rules -> !rules.contains(wish) || served(rules, wish));
            givenUp.add(new GivenUp(wish.words(), words(conflict)));
        }
        return active.removeAll(unserved);
    }

    private boolean served(List<Rule> rules, Rule wish) {
        return making.apply(rules).served((Rule.Asked) wish);
    }

    private static List<String> words(List<Rule> rules) {
        return rules.stream().map(Rule::words).toList();
    }
}
