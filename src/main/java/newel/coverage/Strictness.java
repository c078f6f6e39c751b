package newel.coverage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Limits;
import newel.limit.Preset;
import newel.limit.Sided;
import newel.limit.WrittenLimit;

/**
 * The rows beside the presets, each kind of limit on its own at a strict value, and the gaps that are explained.
 *
 * @param limits by name, in the order of the file
 */
record Strictness(Map<String, Limits> limits, List<Gap> explained) {
    private static final YAMLMapper YAML = new YAMLMapper();
    /** Sided presets are tried on one side: fit is the same mirrored. */
    private static final Sided SIDE = Sided.RIGHT;

    static Strictness read() {
        try (InputStream file = Strictness.class.getResourceAsStream("coverage.yaml")) {
            return of(YAML.readTree(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Strictness of(JsonNode node) {
        Map<String, Limits> limits = new LinkedHashMap<>();
        node.path("limits")
                .forEach(each -> limits.put(
                        each.path("name").asText(),
                        Limits.of(List.of(), List.of(WrittenLimit.of(each.path("limit"), SIDE)))));
        List<Gap> explained = new ArrayList<>();
        node.path("gaps").forEach(gap -> gap.path("serves").forEach(serves -> explained.add(gap(gap, serves))));
        return new Strictness(limits, explained);
    }

    private static Gap gap(JsonNode gap, JsonNode serves) {
        return new Gap(
                gap.path("row").asText(),
                Served.valueOf(serves.asText().toUpperCase(Locale.ROOT)),
                gap.path("why").asText());
    }

    static Limits limits(Preset preset) {
        List<Limit> limits = preset.limits(preset.sided() ? SIDE : Sided.BOTH);
        return Limits.of(List.of(new Limitation(
                preset.id(),
                preset.id(),
                preset.name(),
                SIDE,
                Limitation.Source.INSTRUCTOR,
                LocalDate.EPOCH,
                null,
                limits,
                List.of())));
    }
}
