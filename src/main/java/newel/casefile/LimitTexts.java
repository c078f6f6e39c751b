package newel.casefile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Optional;
import newel.limit.Limit;

/** Limits of every kind as JSON and back, so that a case file never comes back looser than it was. */
final class LimitTexts {
    private static final TypeReference<List<Limit>> LIMITS = new TypeReference<>() {};
    private static final ObjectMapper JSON =
            JsonMapper.builder().addMixIn(Limit.class, LimitKinds.class).build();

    static JsonNode write(List<Limit> limits) {
        try {
            return JSON.readTree(JSON.writerFor(LIMITS).writeValueAsString(limits));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("limits cannot be written", e);
        }
    }

    /** Empty when one of them is of no known kind or lacks something. */
    static Optional<List<Limit>> read(JsonNode limits) {
        try {
            return Optional.of(List.copyOf(JSON.readerFor(LIMITS).<List<Limit>>readValue(limits.toString())));
        } catch (JsonProcessingException | IllegalArgumentException | NullPointerException e) {
            return Optional.empty();
        }
    }

    private LimitTexts() {}
}
