package newel.handout;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import newel.catalogue.Catalogue;
import newel.client.Client;
import newel.program.Version;

/** Writes the handout of one version for one client. */
public final class Handouts {
    /** Weeks to tick before the program is looked at again (design choice). */
    private static final int WEEKS = 4;

    private final Catalogue catalogue;

    public Handouts(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    public Handout write(Client client, Version version) {
        WeekPlan plan = WeekPlan.of(catalogue, version, client.look());
        return new Handout(
                client.profile().name(),
                version.number(),
                version.made(),
                days(version),
                version.origin().brief().or(client.wishes().minutes()).minutes(),
                cautions(client),
                StopSigns.ALL,
                client.profile().toCall(),
                client.profile().textSize().points(),
                plan.parts(),
                plan.days(),
                version.days().stream().map(Handouts::shortName).toList(),
                WEEKS);
    }

    private static List<String> cautions(Client client) {
        return Stream.concat(
                        Stream.of(
                                "Breathe all the time. Never hold your breath.",
                                "Put the chair against a wall. Wear shoes that grip."),
                        client.limitations().stream().flatMap(limitation -> limitation.cautions().stream()))
                .distinct()
                .toList();
    }

    private static String days(Version version) {
        List<String> names = version.days().stream()
                .map(day -> day.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                .toList();
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    static String shortName(DayOfWeek day) {
        return day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }
}
