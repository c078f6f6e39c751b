package newel.limit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

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
                node.path("spoken").asText(id.replace('-', ' ')),
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
            restrictions.add(new Preset.Restriction(
                    WrittenLimit.of(node), node.path("source").asText(), how));
        } catch (IllegalArgumentException e) {
            faults.add(id + ": " + e.getMessage() + " in " + node);
        }
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(each -> texts.add(each.asText()));
        return List.copyOf(texts);
    }
}
