package newel.referral;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.Disease;
import newel.client.FallsAnswers;
import newel.limit.Called;
import newel.limit.Limitation;

/** What the client told, line by line. What was not asked is said to be not known, never to be absent. */
final class Told {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    static List<String> lines(Client client) {
        List<String> told = new ArrayList<>();
        told.add("Known illness, as told by the client: "
                + illness(client.readiness().knownDisease()) + ".");
        told.add("Regular exercise in the last 3 months, as told: "
                + word(client.readiness().regularExercise()) + ".");
        told.add("Medicine that slows the pulse, as told: "
                + word(client.readiness().pulseLoweringMedicine()) + ".");
        told.add("Falls in the last 12 months, as told: " + falls(client.falls()) + ".");
        for (Limitation each : client.limitations()) {
            told.add("Logged: " + Called.of(each) + ", since " + DAY.format(each.since()) + ".");
        }
        return List.copyOf(told);
    }

    private static String illness(Answers<Disease> answers) {
        String named = answers.all(Disease.class, Answer.YES).stream()
                .map(Disease::words)
                .collect(Collectors.joining("; "));
        boolean open = !answers.all(Disease.class, Answer.UNKNOWN).isEmpty();
        if (named.isEmpty()) {
            return open ? "not known" : "none";
        }
        return open ? named + "; others not known" : named;
    }

    private static String falls(FallsAnswers falls) {
        if (falls.fallsPastYear() == null) {
            return "not known";
        }
        return falls.fallsPastYear()
                + when(falls.injured(), ", with an injury")
                + when(falls.unableToRise(), ", lay long or could not get up")
                + when(falls.lostConsciousness(), ", lost consciousness");
    }

    private static String when(Answer answer, String words) {
        return answer.yes() ? words : "";
    }

    private static String word(Answer answer) {
        return switch (answer) {
            case YES -> "yes";
            case NO -> "no";
            case UNKNOWN -> "not known";
        };
    }

    private Told() {}
}
