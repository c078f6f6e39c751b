package newel.coverage;

import java.util.Map;

/**
 * One line of the table.
 *
 * @param name a preset's id, a limit in words, or a place
 * @param fitting how many variants fit that serve each column; every column has its number
 */
public record Row(String name, Map<Served, Integer> fitting) {}
