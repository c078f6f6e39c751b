package newel.assess;

import java.math.BigDecimal;
import java.util.List;
import newel.source.Rule;

/** A result in one of several grades, from the first whose upper end it does not pass. */
public record Scale(Rule rule, String population, String onlyFor, List<Grade> grades) implements Table {

    /**
     * @param to its upper end; null for the last grade, which is open
     * @param included whether the end belongs to it
     */
    public record Grade(BigDecimal to, boolean included, Says says) {
        boolean holds(BigDecimal value) {
            return to == null || value.compareTo(to) < (included ? 1 : 0);
        }
    }

    public boolean applies() {
        return onlyFor.isEmpty();
    }

    Says of(BigDecimal value) {
        return grades.stream()
                .filter(grade -> grade.holds(value))
                .findFirst()
                .orElseThrow()
                .says();
    }

    @Override
    public List<Row> rows() {
        return List.of();
    }
}
