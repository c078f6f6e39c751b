package newel.compose;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** What composing weighs and counts with, each figure with its source, for the page of sources. */
public final class Statements {
    private static final String WEIGHS = "What composing weighs";
    private static final String TIMES = "How long things take";
    private static final String EFFORT = "Effort of a week";

    public static List<Statement> all() {
        List<Statement> all = new ArrayList<>();
        Costs.read("weights.yaml")
                .properties()
                .forEach(entry -> all.add(new Statement(
                        new Rule("weight-" + entry.getKey(), "Newel", Known.DESIGN_CHOICE),
                        WEIGHS,
                        "%s: %s. %s"
                                .formatted(
                                        words(entry.getKey()),
                                        points(entry.getValue().path("points").asInt()),
                                        entry.getValue().path("why").asText()))));
        Costs.read("timing.yaml").properties().forEach(entry -> times(entry, all));
        Costs.read("activity.yaml").properties().forEach(entry -> all.add(effort(entry)));
        return all;
    }

    private static String points(int points) {
        return (points < 0 ? "−" : "") + Math.abs(points) + (Math.abs(points) == 1 ? " point" : " points");
    }

    private static void times(Map.Entry<String, JsonNode> entry, List<Statement> all) {
        if (entry.getValue().isArray()) {
            for (JsonNode each : entry.getValue()) {
                String from = each.path("fromMinutes").asText();
                all.add(time(
                        "time-" + entry.getKey() + "-" + from,
                        words(entry.getKey()) + " after each movement of a round, in sessions of " + from
                                + " minutes and more",
                        each));
            }
        } else {
            all.add(time("time-" + entry.getKey(), words(entry.getKey()), entry.getValue()));
        }
    }

    private static Statement time(String id, String what, JsonNode value) {
        String much = value.has("seconds")
                ? value.path("seconds").asInt() + " seconds"
                : value.path("hundredths").asInt() + " hundredths";
        String says =
                "%s: %s. %s".formatted(what, much, value.path("why").asText()).strip();
        return new Statement(new Rule(id, "Newel", known(value.path("source").asText())), TIMES, says);
    }

    private static Statement effort(Map.Entry<String, JsonNode> entry) {
        JsonNode value = entry.getValue();
        String what = words(entry.getKey());
        String says;
        if (value.has("least")) {
            says = "%s: %d to %d minutes of moderate activity a week."
                    .formatted(
                            what,
                            value.path("least").asInt(),
                            value.path("most").asInt());
        } else {
            String code = value.has("code")
                    ? " (entry %s)".formatted(value.path("code").asText())
                    : " and more";
            says = "%s: %s MET%s. A value of younger adults."
                    .formatted(what, value.path("met").asText(), code);
        }
        return new Statement(
                new Rule(
                        "met-" + entry.getKey(),
                        value.path("source").asText(),
                        known(value.path("known").asText())),
                EFFORT,
                says);
    }

    private static Known known(String written) {
        return Known.valueOf(written.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }

    /** "changePosition" is told as "Change position". */
    private static String words(String key) {
        String spaced = key.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
        return Character.toUpperCase(spaced.charAt(0)) + spaced.substring(1);
    }

    private Statements() {}
}
