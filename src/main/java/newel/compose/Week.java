package newel.compose;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import newel.catalogue.Purpose;

/**
 * A week of sessions.
 *
 * @param sessions by day
 * @param worked by group, on how many days an item strengthens it
 * @param balanceDays days with balance work
 * @param strengthDays days with strength work
 * @param activity what it comes to against the guideline on activity
 * @param shortOf what of the guideline the week does not reach, each with why, as sentences
 */
public record Week(
        Map<DayOfWeek, Composed> sessions,
        Map<Purpose, Integer> worked,
        int balanceDays,
        int strengthDays,
        Activity activity,
        List<String> shortOf) {
    public Week {
        sessions = Collections.unmodifiableMap(new EnumMap<>(sessions));
        worked = Map.copyOf(worked);
        shortOf = List.copyOf(shortOf);
    }
}
