package newel.limit;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All presets, in the order of their file. A faulty file stops the start and lists every fault at once. */
public final class Presets {
    private static final YAMLMapper YAML = YAMLMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final Map<String, Preset> byId = new LinkedHashMap<>();

    private Presets(List<Preset> presets) {
        presets.forEach(preset -> byId.put(preset.id(), preset));
    }

    /** The shipped presets. */
    public static Presets read() {
        try (InputStream file = Presets.class.getResourceAsStream("presets.yaml")) {
            return of(YAML.readTree(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Presets of(JsonNode list) {
        List<String> faults = new ArrayList<>();
        List<Preset> presets = new ArrayList<>();
        list.forEach(node -> presets.add(PresetReader.read(node, faults)));
        presets.stream()
                .map(Preset::id)
                .filter(id ->
                        presets.stream().filter(each -> each.id().equals(id)).count() > 1)
                .distinct()
                .forEach(id -> faults.add(id + ": there are two presets of this name"));
        if (!faults.isEmpty()) {
            throw new IllegalStateException(String.join("\n", faults));
        }
        return new Presets(presets);
    }

    public List<Preset> all() {
        return List.copyOf(byId.values());
    }

    public Optional<Preset> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }
}
