package newel.client;

/**
 * What was asked and measured before one session.
 *
 * @param pain where the client is worst off at rest, 0 to 10; null when not asked
 */
public record DayAnswers(Answers<DaySign> signs, Integer pain, Vitals vitals) {}
