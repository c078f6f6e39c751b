package newel.screen;

import java.time.LocalDate;
import newel.client.DayAnswers;

/**
 * A check before a session, with the outcome as it was judged then.
 *
 * @param glucose null when it was not measured
 */
public record Checked(String id, LocalDate on, DayAnswers answers, Glucose glucose, Today outcome) {}
