package newel.limit;

/**
 * Why something does not fit.
 *
 * @param limit what was broken
 * @param limitation whose words it rests on; empty when it is the home
 * @param text one sentence for the instructor
 */
public record Reason(Limit limit, String limitation, String text) {}
