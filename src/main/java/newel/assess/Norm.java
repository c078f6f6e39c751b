package newel.assess;

import java.util.List;
import newel.source.Rule;

/**
 * A range that most people of an age and sex lie in; its ends count as within.
 *
 * @param spread what the range is: "25th to 75th centile"
 * @param easy below it, a program begins with the easy forms (design choice)
 */
public record Norm(
        Rule rule, String population, String spread, Says below, Says within, Says above, boolean easy, List<Row> rows)
        implements Table {}
