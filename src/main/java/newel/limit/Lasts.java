package newel.limit;

/**
 * How long a dose goes on without a break.
 *
 * @param standingSeconds on the feet, rounded up; 0 for who sits down in each repetition or does not stand
 * @param armsHighSeconds with the arms at or above the shoulders, rounded up
 */
public record Lasts(int standingSeconds, int armsHighSeconds) {}
