/**
 * Tests that an instructor does in a home: how each is run, what a result scores, what published figures say about it, how
 * it changed, and where it says to begin.
 *
 * <p>Every figure stands in a data file, one a test, with its source, how well it is known and whose figures they are; it is
 * read and checked whole at start. Decimals are exact: nothing here computes in floating point but the geometry of a plot.
 * Outside the ages of a table there is no verdict, never a guess. A cut-off belongs to its own source and to nothing else.
 *
 * <p>A result screens; it does not diagnose. Not here: what a falls path or a readiness rule makes of a result.
 */
package newel.assess;
