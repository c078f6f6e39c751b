package newel.client;

import java.time.LocalDate;

/**
 * One result.
 *
 * @param armsUsed the arms were used where the test forbids it
 */
public record Measured(Measure measure, double value, LocalDate on, boolean armsUsed) {
    public Measured(Measure measure, double value, LocalDate on) {
        this(measure, value, on, false);
    }
}
