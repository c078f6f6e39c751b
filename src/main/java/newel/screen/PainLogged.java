package newel.screen;

import java.time.LocalDate;

/**
 * A session's pain as it was logged, with what it said then.
 *
 * @param where in the client's words
 */
public record PainLogged(String id, LocalDate on, String where, PainLog log, PainOutcome outcome) {}
