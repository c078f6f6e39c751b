package newel.referral;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import newel.assess.Guides;
import newel.client.Answer;
import newel.client.Client;
import newel.client.Disease;
import newel.client.FallsAnswers;
import newel.client.TextSize;
import newel.limit.Called;
import newel.limit.Limitation;
import newel.screen.Screening;
import newel.source.Finding;

/** Everything about one client that could go into a note. What was not asked is said to be not known, never to be absent. */
public final class Facts {
    /** Stands among what was measured, with its unit. */
    private static final Pattern BARE_PRESSURE = Pattern.compile("Blood pressure \\d+/\\d+\\.");

    private final Client client;
    private final Map<String, Fact> facts = new LinkedHashMap<>();

    public static List<Fact> of(Client client, Screening screening, Guides guides) {
        Facts all = new Facts(client);
        all.needs();
        all.told();
        all.logged();
        all.found(screening);
        MeasuredFacts.of(client, guides).forEach(all::add);
        return List.copyOf(all.facts.values());
    }

    private Facts(Client client) {
        this.client = client;
    }

    private void needs() {
        if (client.profile().textSize() != TextSize.LARGE) {
            add("needs-print", Fact.Part.NEEDS, "Reads large print.");
        }
        if (client.profile().phone() != null) {
            add("needs-phone", Fact.Part.NEEDS, "Phone: " + client.profile().phone() + ".");
        }
        if (client.profile().toCall() != null) {
            add(
                    "needs-contact",
                    Fact.Part.NEEDS,
                    "To call when something is wrong: %s, phone %s."
                            .formatted(
                                    client.profile().toCall().name(),
                                    client.profile().toCall().phone()));
        }
    }

    private void told() {
        for (Disease each : client.readiness().knownDisease().all(Disease.class, Answer.YES)) {
            add("told-" + each.code(), Fact.Part.TOLD, each.words() + ", as told by the client.");
        }
        if (!client.readiness()
                .knownDisease()
                .all(Disease.class, Answer.UNKNOWN)
                .isEmpty()) {
            add("told-open", Fact.Part.TOLD, "Not every question about known illness is answered.");
        }
        add(
                "told-exercise",
                Fact.Part.TOLD,
                "Regular exercise in the last 3 months, as told: "
                        + word(client.readiness().regularExercise()) + ".");
        add(
                "told-pulse-medicine",
                Fact.Part.TOLD,
                "Medicine that slows the pulse, as told: "
                        + word(client.readiness().pulseLoweringMedicine()) + ".");
        add("told-falls", Fact.Part.TOLD, "Falls in the last 12 months, as told: " + falls(client.falls()) + ".");
    }

    private void logged() {
        for (Limitation each : client.limitations()) {
            add(
                    "logged-" + each.id(),
                    Fact.Part.LOGGED,
                    "%s, since %s, %s.".formatted(Called.of(each), Days.of(each.since()), who(each)));
        }
    }

    private static String who(Limitation limitation) {
        return switch (limitation.source()) {
            case CLIENT -> "said by the client";
            case INSTRUCTOR -> "noted by the instructor";
            case CLINICIAN -> "ordered by a clinician";
        };
    }

    private void found(Screening screening) {
        for (Finding each : screening.reasons()) {
            if (!BARE_PRESSURE.matcher(each.text()).matches()) {
                add("found-" + slug(each), Fact.Part.FOUND, each.text());
            }
        }
    }

    /** One rule may find several things: the words tell them apart. */
    private static String slug(Finding finding) {
        String plain = (finding.rule().id() + " " + finding.text()).toLowerCase(Locale.ROOT);
        return plain.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }

    private void add(String key, Fact.Part part, String text) {
        add(new Fact(key, part, text));
    }

    private void add(Fact fact) {
        facts.putIfAbsent(fact.key(), fact);
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
}
