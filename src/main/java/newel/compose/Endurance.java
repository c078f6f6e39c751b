package newel.compose;

/**
 * How long a person may go on without a break.
 *
 * @param standingSeconds on the feet
 * @param armsHighSeconds with the arms at or above the shoulders
 */
public record Endurance(int standingSeconds, int armsHighSeconds) {
    /** Longer than any session. */
    public static final Endurance WITHOUT_LIMIT = new Endurance(1 << 20, 1 << 20);
}
