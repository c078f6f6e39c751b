package newel.casefile;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import newel.catalogue.Kit;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.Disease;
import newel.client.Experience;
import newel.client.FallsAnswers;
import newel.client.Goal;
import newel.client.Home;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Profile;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Sex;
import newel.client.Symptom;
import newel.client.TextSize;
import newel.client.Vitals;
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
            String where =
                    e.getLocation() == null ? "" : " (line " + e.getLocation().getLineNr() + ")";
            return new ReadCase.Faulty(List.of("$: this is not JSON" + where + ": " + e.getOriginalMessage()));
        }
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
                readiness(tree.path("readiness"), faults),
                falls(tree.path("falls")),
                vitals(tree.path("vitals")),
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
                answer(home.path("floor")),
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

    private static ReadinessAnswers readiness(JsonNode node, List<String> faults) {
        Signs signs = new Signs(node, faults);
        ReadinessAnswers answers = new ReadinessAnswers(
                answer(node.path("regularExercise")),
                signs.answers("knownDisease", Disease.class, disease -> ""),
                signs.answers("symptoms", Symptom.class, Symptom::code),
                signs.answers("redFlags", RedFlag.class, RedFlag::code),
                answer(node.path("wantsVigorous")),
                answer(node.path("clearedWithinYear")),
                answer(node.path("symptomsCleared")),
                answer(node.path("pulseLoweringMedicine")));
        signs.checkUnknown();
        return answers;
    }

    private static FallsAnswers falls(JsonNode node) {
        return new FallsAnswers(
                node.hasNonNull("fallsPastYear") ? node.get("fallsPastYear").asInt() : null,
                answer(node.path("injured")),
                answer(node.path("unableToRise")),
                answer(node.path("lostConsciousness")),
                answer(node.path("frail")),
                answer(node.path("unsteady")),
                answer(node.path("worried")));
    }

    private static Vitals vitals(JsonNode node) {
        return new Vitals(
                whole(node, "systolic"),
                whole(node, "diastolic"),
                whole(node, "restingPulse"),
                whole(node, "oxygen"),
                number(node, "temperatureC"),
                whole(node, "posturalDrop"),
                number(node, "weightGainKg"),
                answer(node.path("symptoms")));
    }

    private static Integer whole(JsonNode node, String name) {
        return node.hasNonNull(name) ? node.get(name).asInt() : null;
    }

    private static Double number(JsonNode node, String name) {
        return node.hasNonNull(name) ? node.get(name).asDouble() : null;
    }

    private static List<Measured> measures(JsonNode list, List<String> faults) {
        List<Measured> measures = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            JsonNode each = list.get(i);
            LocalDate on = date(each, "on", "$.measures[" + i + "]", faults);
            Measure test = constant(Measure.class, each.get("test").asText());
            measures.add(new Measured(
                    test,
                    each.get("value").asDouble(),
                    on,
                    each.path("armsUsed").asBoolean()));
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

    private static LocalDate date(JsonNode node, String name, String path, List<String> faults) {
        try {
            return LocalDate.parse(node.get(name).asText());
        } catch (DateTimeException e) {
            faults.add("%s.%s: there is no such day: %s"
                    .formatted(path, name, node.get(name).asText()));
            return null;
        }
    }

    static Answer answer(JsonNode node) {
        return node.isBoolean() ? (node.asBoolean() ? Answer.YES : Answer.NO) : Answer.UNKNOWN;
    }

    static <E extends Enum<E>> E constant(Class<E> type, String text) {
        return Enum.valueOf(type, text.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** The lists of signs: what is listed is yes, what was asked and not known is told apart, a list left out was not asked. */
    private record Signs(JsonNode node, List<String> faults) {
        <E extends Enum<E>> Answers<E> answers(String name, Class<E> type, Function<E, String> code) {
            if (!node.has(name)) {
                return Answers.notAsked();
            }
            Map<E, Answer> given = new EnumMap<>(type);
            for (E each : type.getEnumConstants()) {
                given.put(
                        each,
                        listed("unknown", each, code)
                                ? Answer.UNKNOWN
                                : listed(name, each, code) ? Answer.YES : Answer.NO);
            }
            for (int i = 0; i < node.get(name).size(); i++) {
                String text = node.get(name).get(i).asText();
                if (EnumSet.allOf(type).stream().noneMatch(each -> names(each, code, text))) {
                    faults.add("$.readiness.%s[%d]: there is no such sign: %s".formatted(name, i, text));
                }
            }
            return new Answers<>(given);
        }

        private <E extends Enum<E>> boolean listed(String name, E each, Function<E, String> code) {
            for (JsonNode text : node.path(name)) {
                if (names(each, code, text.asText())) {
                    return true;
                }
            }
            return false;
        }

        private static <E extends Enum<E>> boolean names(E each, Function<E, String> code, String text) {
            return text.equalsIgnoreCase(code.apply(each)) || text.equals(CaseWriter.plain(each));
        }

        void checkUnknown() {
            JsonNode unknown = node.path("unknown");
            for (int i = 0; i < unknown.size(); i++) {
                String text = unknown.get(i).asText();
                boolean known = EnumSet.allOf(Symptom.class).stream().anyMatch(each -> names(each, Symptom::code, text))
                        || EnumSet.allOf(RedFlag.class).stream().anyMatch(each -> names(each, RedFlag::code, text))
                        || EnumSet.allOf(Disease.class).stream().anyMatch(each -> names(each, disease -> "", text));
                if (!known) {
                    faults.add("$.readiness.unknown[%d]: there is no such sign: %s".formatted(i, text));
                }
            }
        }
    }
}
