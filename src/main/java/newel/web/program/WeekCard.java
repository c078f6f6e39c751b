package newel.web.program;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import newel.catalogue.Catalogue;
import newel.catalogue.Purpose;
import newel.compose.Activity;
import newel.compose.Reached;
import newel.program.Version;

/**
 * The week as a picture of days by groups, beside the guideline.
 *
 * @param days names for the head of the table
 * @param activity minutes against the guideline, as sentences
 * @param shortOf what the week does not reach, as sentences
 */
public record WeekCard(List<String> days, List<Row> rows, List<String> activity, List<String> shortOf) {
    /** @param sets on each day */
    public record Row(String group, List<Integer> sets, boolean enough) {}

    static WeekCard of(Catalogue catalogue, Version version) {
        Reached reached = Reached.of(catalogue, version.sessions());
        List<Row> rows = Arrays.stream(Purpose.values())
                .filter(purpose -> purpose != Purpose.PULSE)
                .map(purpose -> row(reached, purpose, version.days()))
                .toList();
        return new WeekCard(
                version.days().stream()
                        .map(day -> day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH))
                        .toList(),
                rows,
                activity(reached.activity()),
                reached.shortOf());
    }

    private static Row row(Reached reached, Purpose purpose, List<DayOfWeek> days) {
        return new Row(
                words(purpose),
                days.stream()
                        .map(day -> reached.sets().get(purpose).getOrDefault(day, 0))
                        .toList(),
                reached.enough(purpose));
    }

    private static List<String> activity(Activity activity) {
        return List.of(
                "About %d minutes of moving in the week, of which %d count as moderate effort or more, of the %d a week of the guideline."
                        .formatted(activity.allMinutes(), activity.moderateMinutes(), activity.guidelineMinutes()),
                Activity.ESTIMATE);
    }

    static String words(Purpose purpose) {
        String name = purpose.name().toLowerCase(Locale.ROOT);
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
