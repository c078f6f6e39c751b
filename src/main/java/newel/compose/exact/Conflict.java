package newel.compose.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * A smallest set of rules that cannot hold together: all of them are needed for the conflict, though another conflict may be
 * smaller still. Found by splitting in halves (QuickXplain, Junker 2004).
 */
public final class Conflict {
    /**
     * @param rules what must rather stay out of the answer comes first
     * @param holds whether these rules can hold together; "not known" counts as yes, so that what is named is a conflict
     *     even when not everything was decided, though perhaps not a smallest one
     */
    public static <R> List<R> smallest(List<R> rules, Predicate<List<R>> holds) {
        return holds.test(rules) ? List.of() : split(List.of(), false, rules, holds);
    }

    /** The rules out of these that are needed for a conflict with the background. */
    private static <R> List<R> split(List<R> background, boolean grown, List<R> rules, Predicate<List<R>> holds) {
        if (grown && !holds.test(background)) {
            return List.of();
        }
        if (rules.size() == 1) {
            return rules;
        }
        List<R> first = rules.subList(0, rules.size() / 2);
        List<R> second = rules.subList(rules.size() / 2, rules.size());
        List<R> inSecond = split(joined(background, first), true, second, holds);
        List<R> inFirst = split(joined(background, inSecond), !inSecond.isEmpty(), first, holds);
        return joined(inFirst, inSecond);
    }

    private static <R> List<R> joined(List<R> a, List<R> b) {
        List<R> joined = new ArrayList<>(a);
        joined.addAll(b);
        return List.copyOf(joined);
    }

    private Conflict() {}
}
