package newel.compose;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A week of sessions.
 *
 * @param days what composing comes to, by day
 * @param reached what the sessions come to beside the guideline
 */
public record Week(Map<DayOfWeek, Composed> days, Reached reached) {
    public Week {
        days = Collections.unmodifiableMap(new EnumMap<>(days));
    }

    /** By day, where one could be made. */
    public SortedMap<DayOfWeek, Composed.Made> made() {
        return made(days);
    }

    static SortedMap<DayOfWeek, Composed.Made> made(Map<DayOfWeek, Composed> days) {
        SortedMap<DayOfWeek, Composed.Made> all = new TreeMap<>();
        days.forEach((day, composed) -> {
            if (composed instanceof Composed.Made made) {
                all.put(day, made);
            }
        });
        return all;
    }

    /** What cannot hold together on the first day for which nothing can be made; none when there is no such day. */
    public List<String> conflict() {
        return days.values().stream()
                .flatMap(composed -> composed instanceof Composed.Refused refused
                        ? java.util.stream.Stream.of(refused.conflict())
                        : java.util.stream.Stream.empty())
                .findFirst()
                .orElse(List.of());
    }
}
