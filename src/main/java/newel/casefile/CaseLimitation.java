package newel.casefile;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import newel.body.Motion;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Presets;
import newel.limit.Sided;

/** One entry of a case file's limitations. */
record CaseLimitation(Presets presets, JsonNode node, String path, List<String> faults) {
    Optional<Limitation> read(String id, LocalDate since, LocalDate review) {
        Optional<Limitation> read = node.has("preset")
                ? preset(id, since, review)
                : node.has("limit") ? own(id, since, review) : Optional.of(bare(id, since, review));
        return node.has("limits") ? read.flatMap(this::withLimits) : read;
    }

    /** Limits that are written out stand in place of the preset's. */
    private Optional<Limitation> withLimits(Limitation l) {
        Optional<List<Limit>> limits = LimitTexts.read(node.get("limits"));
        if (limits.isEmpty()) {
            faults.add(path + ".limits: one of these is not a limit that is known");
        }
        return limits.map(read -> new Limitation(
                l.id(), l.preset(), l.words(), l.side(), l.source(), l.since(), l.review(), read, l.cautions()));
    }

    private Limitation bare(String id, LocalDate since, LocalDate review) {
        String words = node.path("words").asText("limits of one's own");
        return new Limitation(id, "", words, side(node), source(), since, review, List.of(), List.of());
    }

    private Optional<Limitation> preset(String id, LocalDate since, LocalDate review) {
        String preset = node.get("preset").asText();
        if (presets.find(preset).isEmpty()) {
            faults.add(path + ".preset: there is no preset " + preset);
        }
        return presets.find(preset)
                .map(found -> found.limitation(id, node.path("words").asText(""), side(node), source(), since, review));
    }

    private Optional<Limitation> own(String id, LocalDate since, LocalDate review) {
        JsonNode limit = node.get("limit");
        String name = limit.get("joint").asText() + "-" + limit.get("motion").asText();
        Optional<Motion> motion = motion(name);
        if (motion.isEmpty()) {
            faults.add(
                    path + ".limit: there is no motion " + limit.get("motion").asText() + " of the "
                            + limit.get("joint").asText());
        }
        return motion.map(found -> limitation(id, found, limit, since, review));
    }

    private Limitation limitation(String id, Motion motion, JsonNode limit, LocalDate since, LocalDate review) {
        Sided side = limit.has("side") ? side(limit) : side(node);
        double degrees = limit.get("maxDegrees").asDouble();
        String words =
                node.path("words").asText("%s %s to %.0f degrees".formatted(motion.part(), motion.verb(), degrees));
        return new Limitation(
                id,
                "",
                words,
                side,
                source(),
                since,
                review,
                List.of(new Limit.Angle(motion, side, degrees)),
                List.of());
    }

    private static Optional<Motion> motion(String name) {
        String constant = name.toUpperCase(Locale.ROOT).replace('-', '_');
        for (Motion motion : Motion.values()) {
            if (motion.name().equals(constant)) {
                return Optional.of(motion);
            }
        }
        return Optional.empty();
    }

    private static Sided side(JsonNode node) {
        return CaseReader.constant(Sided.class, node.path("side").asText("both"));
    }

    private Limitation.Source source() {
        return CaseReader.constant(Limitation.Source.class, node.path("source").asText("client"));
    }
}
