package newel.casefile;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import newel.catalogue.Kit;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.Experience;
import newel.client.Goal;
import newel.client.Home;
import newel.client.Measured;
import newel.client.Profile;
import newel.client.Sex;
import newel.client.TextSize;
import newel.client.Wishes;
import newel.limit.Limitation;
import newel.limit.Presets;

/** Reads a case file into a client without a name. */
public final class CaseReader {
    /** A home that says nothing of its ceiling or floor: 240 cm is common (from memory); one pace of room. */
    private static final int USUAL_CEILING = 240;

    private static final double ONE_PACE = 1;

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final Presets presets;
    private final LocalDate today;

    /** @param today the day on which the client has the age that the file says */
    public CaseReader(Presets presets, LocalDate today) {
        this.presets = presets;
        this.today = today;
    }

    public ReadCase read(String text) {
        try {
            JsonNode tree = JSON.readTree(text);
            return tree.isMissingNode() ? new ReadCase.Faulty(List.of("$: the file is empty")) : read(tree);
        } catch (JsonProcessingException e) {
            return new ReadCase.Faulty(List.of("$: " + notJson(e)));
        }
    }

    private static String notJson(JsonProcessingException e) {
        if (e.getOriginalMessage().startsWith("Duplicate field")) {
            return "the same name stands twice at line %d; keep one of them"
                    .formatted(e.getLocation().getLineNr());
        }
        return e instanceof JsonEOFException
                ? "the file breaks off before its end; download it again"
                : "this is not JSON; see line %d, character %d"
                        .formatted(e.getLocation().getLineNr(), e.getLocation().getColumnNr());
    }

    public ReadCase read(JsonNode tree) {
        List<String> faults = new ArrayList<>(CaseSchema.faults(tree));
        if (!faults.isEmpty()) {
            return new ReadCase.Faulty(List.copyOf(faults));
        }
        Client client = client(tree, faults);
        return faults.isEmpty() ? new ReadCase.Read(client) : new ReadCase.Faulty(List.copyOf(faults));
    }

    private Client client(JsonNode tree, List<String> faults) {
        return new Client(
                new ClientId("case"),
                profile(tree),
                home(tree.get("home")),
                wishes(tree),
                CaseAnswers.readiness(tree.path("readiness"), faults),
                CaseAnswers.falls(tree.path("falls"), faults),
                CaseAnswers.vitals(tree.path("vitals")),
                measures(tree.path("measures"), faults),
                limitations(tree.path("limitations"), faults));
    }

    private Profile profile(JsonNode tree) {
        return new Profile(
                "",
                today.minusYears(tree.get("age").asInt()),
                constant(Sex.class, tree.get("sex").asText()),
                tree.get("statureCm").asInt(),
                tree.hasNonNull("massKg") ? tree.get("massKg").asDouble() : null,
                TextSize.LARGER,
                null,
                null);
    }

    private static Home home(JsonNode home) {
        Set<Kit> kit = EnumSet.noneOf(Kit.class);
        home.get("kit").forEach(each -> kit.add(constant(Kit.class, each.asText())));
        return new Home(
                kit,
                home.path("ceilingCm").asInt(USUAL_CEILING),
                CaseAnswers.answer(home.path("floor")),
                home.path("clearMetres").asDouble(ONE_PACE));
    }

    private static Wishes wishes(JsonNode tree) {
        List<Goal> goals = new ArrayList<>();
        tree.get("goals").forEach(each -> goals.add(constant(Goal.class, each.asText())));
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        tree.get("days").forEach(each -> days.add(day(each.asText())));
        return new Wishes(
                goals,
                tree.get("minutes").asInt(),
                days,
                constant(Experience.class, tree.path("experience").asText("new")));
    }

    private static DayOfWeek day(String name) {
        for (DayOfWeek day : DayOfWeek.values()) {
            if (day.name().toLowerCase(Locale.ROOT).startsWith(name)) {
                return day;
            }
        }
        throw new IllegalArgumentException(name);
    }

    private static List<Measured> measures(JsonNode list, List<String> faults) {
        List<Measured> measures = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String path = "$.measures[" + i + "]";
            LocalDate on = date(list.get(i), "on", path, faults);
            CaseMeasure.read(list.get(i), on, path, faults).ifPresent(measures::add);
        }
        return measures;
    }

    private List<Limitation> limitations(JsonNode list, List<String> faults) {
        List<Limitation> limitations = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String path = "$.limitations[" + i + "]";
            LocalDate since = list.get(i).has("since") ? date(list.get(i), "since", path, faults) : today;
            LocalDate review = list.get(i).hasNonNull("review") ? date(list.get(i), "review", path, faults) : null;
            new CaseLimitation(presets, list.get(i), path, faults)
                    .read("case-" + i, since, review)
                    .ifPresent(limitations::add);
        }
        return limitations;
    }

    static LocalDate date(JsonNode node, String name, String path, List<String> faults) {
        try {
            return LocalDate.parse(node.get(name).asText());
        } catch (DateTimeException e) {
            faults.add("%s.%s: there is no such day: %s"
                    .formatted(path, name, node.get(name).asText()));
            return null;
        }
    }

    static <E extends Enum<E>> E constant(Class<E> type, String text) {
        return Enum.valueOf(type, text.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
