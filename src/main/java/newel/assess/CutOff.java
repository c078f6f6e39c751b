package newel.assess;

import java.util.List;
import newel.source.Rule;

/**
 * One figure beyond which a source speaks of a risk or a lack.
 *
 * @param flag what it says beyond
 * @param clear what it says on this side
 * @param onlyFor people or circumstances that nothing here knows about; such a figure is shown and not applied. Empty: applied
 * @param of the working group whose line it is; null where it is nobody's in particular
 * @param easy beyond it, a program begins with the easy forms (design choice)
 */
public record CutOff(
        Rule rule,
        String population,
        Compare compare,
        Says flag,
        Says clear,
        String onlyFor,
        Consensus of,
        boolean easy,
        List<Row> rows)
        implements Table {
    public boolean applies() {
        return onlyFor.isEmpty();
    }

    /** As it stands in a practice that follows a working group. */
    CutOff following(Consensus group) {
        if (of == null) {
            return this;
        }
        String only = of == group ? "" : "practices that follow the " + of.words();
        return new CutOff(rule, population, compare, flag, clear, only, of, easy, rows);
    }
}
