/**
 * What the printed sheet says: cautions and stop signs first, whom to call, then each movement with its pictures at the
 * client's own range, its dose in figures, its steps and its stop line. Plain words throughout; layout belongs to the page.
 */
package newel.handout;
