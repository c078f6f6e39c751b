package newel.compose;

/**
 * What is known of a session's score. Balance and rounds are chosen first, of all that fit; then warm-up and cool-down, of
 * all that fit with those. Each step is proved for itself: that no other rounds with other ends would score more together
 * is not said.
 *
 * @param bound no session chosen in these two steps scores more
 */
public record Proof(boolean optimal, int score, int bound) {
    Proof and(Proof other) {
        return new Proof(optimal && other.optimal, score + other.score, bound + other.bound);
    }
}
