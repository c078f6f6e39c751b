package newel.program;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import newel.compose.LeftOut;
import newel.compose.Session;

/**
 * A program as it was on a day.
 *
 * @param number 1, 2, 3 … without gaps
 * @param reason why this version was made
 * @param days the session is done on each of these
 */
public record Version(
        int number, LocalDate made, String reason, Set<DayOfWeek> days, Session session, List<LeftOut> leftOut) {
    public Version {
        days = Set.copyOf(days);
        leftOut = List.copyOf(leftOut);
    }

    public Version next(LocalDate day, String why, Session changed) {
        return new Version(number + 1, day, why, days, changed, leftOut);
    }

    public Version next(LocalDate day, String why, Session changed, List<LeftOut> nowLeftOut) {
        return new Version(number + 1, day, why, days, changed, nowLeftOut);
    }
}
