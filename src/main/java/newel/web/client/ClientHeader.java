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

/**
 * What stands above every page of one client and never changes shape.
 *
 * @param mind what to mind, what a clinician ordered first
 * @param tone stop, care or well: how the readiness is drawn
 * @param review next day to look at a limitation again, empty for none
 */
public record ClientHeader(
        String base, String name, int age, List<String> mind, String readiness, String tone, String review) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    public static ClientHeader of(Client client, LocalDate today) {
        Screening screening = Screening.of(client);
        return new ClientHeader(
                "/clients/" + client.id().value(),
                client.profile().name(),
                client.profile().age(today),
                mind(client),
                readiness(screening),
                tone(screening),
                review(client));
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
