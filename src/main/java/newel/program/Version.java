package newel.program;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import newel.compose.Item;
import newel.compose.LeftOut;
import newel.compose.Session;

/**
 * A program as it was on a day.
 *
 * @param number 1, 2, 3 … without gaps
 * @param reason why this version was made
 * @param sessions what is done on which day of the week, Monday first; never none
 */
public record Version(
        int number,
        LocalDate made,
        String reason,
        SortedMap<DayOfWeek, Session> sessions,
        List<LeftOut> leftOut,
        Origin origin) {
    public Version {
        sessions = Collections.unmodifiableSortedMap(new TreeMap<>(sessions));
        leftOut = List.copyOf(leftOut);
        if (sessions.isEmpty()) {
            throw new IllegalArgumentException("a version has a session on one day at least");
        }
    }

    /** The same session on each of some days. */
    public static SortedMap<DayOfWeek, Session> on(Set<DayOfWeek> days, Session session) {
        SortedMap<DayOfWeek, Session> sessions = new TreeMap<>();
        days.forEach(day -> sessions.put(day, session));
        return sessions;
    }

    public List<DayOfWeek> days() {
        return List.copyOf(sessions.keySet());
    }

    public DayOfWeek firstDay() {
        return sessions.firstKey();
    }

    public Session firstSession() {
        return session(firstDay());
    }

    public Session session(DayOfWeek day) {
        return sessions.get(day);
    }

    /** What is done in the week, day by day; the same variant at the same share and dose is told once. */
    public List<Item> items() {
        Map<List<Object>, Item> items = new LinkedHashMap<>();
        sessions.values()
                .forEach(session -> session.items()
                        .forEach(item -> items.putIfAbsent(List.of(item.variant(), item.share(), item.dose()), item)));
        return List.copyOf(items.values());
    }

    /** Where a movement is done on several days, as on the first of them. */
    public Optional<Item> item(String movement) {
        return sessions.values().stream()
                .flatMap(session -> session.item(movement).stream())
                .findFirst();
    }

    /** Days on which a movement is done. */
    public List<DayOfWeek> days(String movement) {
        return sessions.entrySet().stream()
                .filter(day -> day.getValue().item(movement).isPresent())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** After a change by the instructor's hand, which composing again leaves as it is. */
    public Version next(LocalDate day, String why, SortedMap<DayOfWeek, Session> changed) {
        Origin after = origin.afterHand(movements(sessions), movements(changed));
        return new Version(number + 1, day, why, changed, leftOut, after);
    }

    private static Set<String> movements(SortedMap<DayOfWeek, Session> sessions) {
        return sessions.values().stream()
                .flatMap(Session::items)
                .map(Item::movement)
                .collect(Collectors.toSet());
    }

    /** After a change that limits asked for. */
    public Version next(LocalDate day, String why, UnaryOperator<Session> change, List<LeftOut> nowLeftOut) {
        SortedMap<DayOfWeek, Session> changed = new TreeMap<>();
        sessions.forEach((each, session) -> changed.put(each, change.apply(session)));
        return new Version(number + 1, day, why, changed, nowLeftOut, origin.afterChange());
    }

    /** The same as this one, as the next after another. */
    public Version again(Version newest, LocalDate day) {
        return new Version(newest.number + 1, day, "As version " + number + " was.", sessions, leftOut, origin);
    }
}
