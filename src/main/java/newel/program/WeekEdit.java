package newel.program;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.stream.Collectors;
import newel.compose.Session;

/** The outcome of a change over the days of a week: the day that is looked at decides, the others follow where they can. */
public sealed interface WeekEdit {
    record Made(SortedMap<DayOfWeek, Session> sessions, String reason) implements WeekEdit {}

    record Refused(String why) implements WeekEdit {}

    /** Changes an item wherever it is done in the same variant. */
    static WeekEdit ofItem(Version version, DayOfWeek shown, String movement, Function<Session, Edit> edit) {
        String variant = version.session(shown).item(movement).orElseThrow().variant();
        return of(
                version,
                shown,
                edit,
                (day, session) -> session.item(movement)
                        .filter(item -> item.variant().equals(variant))
                        .isPresent());
    }

    /** Adds a movement on every day that does not have it yet. */
    static WeekEdit ofAddition(Version version, DayOfWeek shown, String movement, Function<Session, Edit> edit) {
        return of(version, shown, edit, (day, session) -> session.item(movement).isEmpty());
    }

    private static WeekEdit of(
            Version version, DayOfWeek shown, Function<Session, Edit> edit, BiPredicate<DayOfWeek, Session> concerned) {
        Edit decided = edit.apply(version.session(shown));
        if (decided instanceof Edit.Refused refused) {
            return new Refused(refused.why());
        }
        SortedMap<DayOfWeek, Session> sessions = new TreeMap<>(version.sessions());
        sessions.replaceAll((day, session) -> day == shown || concerned.test(day, session)
                ? edit.apply(session) instanceof Edit.Made made ? made.session() : session
                : session);
        return new Made(sessions, ((Edit.Made) decided).reason() + onDays(version, sessions));
    }

    /** Names the days where the change is not on all of them. */
    private static String onDays(Version before, SortedMap<DayOfWeek, Session> after) {
        List<String> changed = after.keySet().stream()
                .filter(day -> !after.get(day).equals(before.session(day)))
                .map(day -> day.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                .toList();
        return changed.size() == after.size()
                ? ""
                : changed.stream().collect(Collectors.joining(", ", " On ", " only."));
    }
}
