package newel.web.client;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import newel.client.Client;
import newel.limit.Called;
import newel.limit.Limitation;
import newel.screen.AtRest;
import newel.screen.Readiness;
import newel.screen.Screening;
import newel.screen.Urgency;
import newel.source.Finding;
import newel.web.Practice;

/**
 * What stands above every page of one client and never changes shape.
 *
 * @param mind what to mind, what a clinician ordered first
 * @param tone stop, care or well: how the readiness is drawn
 * @param review next day to look at a limitation again, empty for none
 * @param alarm what to do first in an emergency, empty when there is none
 * @param alarms why
 */
public record ClientHeader(
        String base,
        String name,
        int age,
        List<String> mind,
        String readiness,
        String tone,
        String review,
        String alarm,
        List<String> alarms) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    /** By what the practice has chosen, and with the number it calls. */
    public static ClientHeader of(Client client, Practice practice) {
        return of(client, practice.today(), practice.screening(client), practice.emergencyCall());
    }

    private static ClientHeader of(Client client, LocalDate today, Screening screening, String call) {
        boolean emergency =
                screening.urgency().filter(Urgency.EMERGENCY::equals).isPresent();
        return new ClientHeader(
                "/clients/" + client.id().value(),
                client.profile().name(),
                client.profile().age(today),
                mind(client),
                readiness(screening),
                tone(screening),
                review(client),
                emergency ? "Emergency: " + call + " now" : "",
                emergency ? screening.stopping().stream().map(Finding::text).toList() : List.of());
    }

    private static List<String> mind(Client client) {
        return client.limitations().stream()
                .sorted(Comparator.comparing(each -> each.source() != Limitation.Source.CLINICIAN))
                .map(Called::of)
                .toList();
    }

    private static String readiness(Screening screening) {
        if (screening.atRest() instanceof AtRest.Hold) {
            return "No exercise today";
        }
        return switch (screening.readiness()) {
            case Readiness.Clear clear -> "May start, " + clear.intensity().words();
            case Readiness.ClearWithLimits clear ->
                "May start, " + clear.intensity().words() + ", with conditions";
            case Readiness.Wait wait -> "Waits for " + wait.who().words();
            case Readiness.Stop stop -> "No exercise. " + stop.urgency().words();
        };
    }

    private static String tone(Screening screening) {
        return switch (screening.permission()) {
            case START -> screening.face().isEmpty() ? "well" : "care";
            case PREPARE -> "care";
            case NOTHING -> "stop";
        };
    }

    private static String review(Client client) {
        return client.limitations().stream()
                .map(Limitation::review)
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
                .map(DAY::format)
                .orElse("");
    }
}
