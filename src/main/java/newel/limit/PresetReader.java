package newel.limit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import newel.body.Joint;
import newel.body.Motion;
import newel.catalogue.Grip;
import newel.catalogue.Position;
import newel.catalogue.Support;

/** Reads one preset; what is wrong goes to the list of faults, with the preset's name. */
final class PresetReader {
    private static final Set<String> HOW = Set.of("seen", "from memory", "common practice", "design choice");

    private final String id;
    private final List<String> faults;

    private PresetReader(String id, List<String> faults) {
        this.id = id;
        this.faults = faults;
    }

    static Preset read(JsonNode node, List<String> faults) {
        return new PresetReader(node.path("id").asText("(without id)"), faults).read(node);
    }

    private Preset read(JsonNode node) {
        List<Preset.Restriction> restrictions = new ArrayList<>();
        node.path("limits").forEach(each -> restriction(each, restrictions));
        if (node.path("name").asText().isBlank()) {
            faults.add(id + ": has no name");
        }
        if (restrictions.isEmpty()) {
            faults.add(id + ": restricts nothing");
        }
        if (texts(node.path("cautions")).isEmpty()) {
            faults.add(id + ": has no caution for the client");
        }
        return new Preset(
                id,
                node.path("name").asText(),
                node.path("sided").asBoolean(),
                node.path("weeks").asInt(),
                restrictions,
                texts(node.path("advice")),
                texts(node.path("cautions")));
    }

    private void restriction(JsonNode node, List<Preset.Restriction> restrictions) {
        String how = node.path("how").asText();
        if (node.path("source").asText().isBlank() || !HOW.contains(how)) {
            faults.add(id + ": a limit has no source, or does not say how it is known: " + node);
        }
        try {
            restrictions.add(
                    new Preset.Restriction(limit(node), node.path("source").asText(), how));
        } catch (IllegalArgumentException e) {
            faults.add(id + ": " + e.getMessage() + " in " + node);
        }
    }

    private static Limit limit(JsonNode node) {
        if (node.has("angle")) {
            return new Limit.Angle(constant(Motion.class, node.get("angle")), Sided.BOTH, number(node, "max"));
        }
        if (node.has("load")) {
            return new Limit.Load(constant(Joint.class, node.get("load")), Sided.BOTH, number(node, "max"));
        }
        if (node.has("time")) {
            return new Limit.Time(constant(Limit.Lasting.class, node.get("time")), (int) number(node, "max"));
        }
        if (node.has("avoid")) {
            return new Limit.Avoid(constant(Avoidance.class, node.get("avoid")));
        }
        if (node.has("support")) {
            return new Limit.SupportNeeded(constant(Support.class, node.get("support")));
        }
        if (node.has("positions")) {
            Set<Position> allowed = EnumSet.noneOf(Position.class);
            node.get("positions").forEach(each -> allowed.add(constant(Position.class, each)));
            return new Limit.Positions(allowed);
        }
        return ofHandOrEffort(node);
    }

    private static Limit ofHandOrEffort(JsonNode node) {
        if (node.has("grip")) {
            return new Limit.GripAtMost(Sided.BOTH, constant(Grip.class, node.get("grip")));
        }
        if (node.has("wrist")) {
            return new Limit.NoWristWeight(Sided.BOTH);
        }
        if (node.has("held")) {
            return new Limit.HeldAtMost(Sided.BOTH, number(node, "held"));
        }
        if (node.has("effort")) {
            return new Limit.EffortAtMost((int) number(node, "effort"));
        }
        if (node.has("coordination")) {
            return new Limit.CoordinationAtMost((int) number(node, "coordination"));
        }
        throw new IllegalArgumentException("no known limit");
    }

    private static double number(JsonNode node, String name) {
        if (!node.path(name).isNumber()) {
            throw new IllegalArgumentException(name + " is not a number");
        }
        return node.get(name).asDouble();
    }

    private static <E extends Enum<E>> E constant(Class<E> type, JsonNode node) {
        return Enum.valueOf(type, node.asText().toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(each -> texts.add(each.asText()));
        return List.copyOf(texts);
    }
}
