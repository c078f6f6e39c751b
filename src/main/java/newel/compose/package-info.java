/**
 * Which movements, in which form and trim, in which order and with which dose, so that the minutes, the body, the home and
 * the goals hold at once.
 *
 * <p>{@link newel.compose.Composer} writes a session as a small problem: places in order ({@code Plan}), for each the forms
 * of this person that may stand there ({@code Pool}), rules that must hold ({@code Rule}, {@code PlaceRule}) and terms that
 * score ({@code Term}); weights and their reasons are in {@code weights.yaml}, times in {@code timing.yaml}. {@link
 * newel.compose.exact} solves it to proven optimality. Balance and rounds are chosen first, then the warm-up and cool-down
 * that belong to them; what the proof covers is said in {@link newel.compose.Proof}. Wishes that cannot hold together are
 * given up one by one, each with the smallest conflict found.
 */
package newel.compose;
