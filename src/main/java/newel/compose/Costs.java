package newel.compose;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** How long things take, as {@code timing.yaml} says with a source for each. */
final class Costs {
    static final Costs SHIPPED = new Costs(read("timing.yaml"));

    private final JsonNode file;

    private Costs(JsonNode file) {
        this.file = file;
        file.forEach(Costs::sourced);
    }

    static JsonNode read(String name) {
        try (InputStream stream = Costs.class.getResourceAsStream(name)) {
            return new YAMLMapper().readTree(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void sourced(JsonNode entry) {
        if (entry.isArray()) {
            entry.forEach(Costs::sourced);
        } else if (entry.path("source").asText().isBlank()) {
            throw new IllegalStateException("timing.yaml: no source for " + entry);
        }
    }

    int seconds(String what) {
        JsonNode seconds = file.path(what).path("seconds");
        if (!seconds.isInt()) {
            throw new IllegalStateException("timing.yaml: no seconds for " + what);
        }
        return seconds.asInt();
    }

    double share(String what) {
        return file.path(what).path("hundredths").asInt() / 100.0;
    }

    /** Rest after each movement of a round in a session of so many minutes. */
    int rest(int minutes) {
        int rest = 0;
        for (JsonNode each : file.path("rest")) {
            rest = minutes >= each.path("fromMinutes").asInt()
                    ? each.path("seconds").asInt()
                    : rest;
        }
        return rest;
    }
}
