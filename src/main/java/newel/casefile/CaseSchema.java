package newel.casefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The schema of a case file, JSON Schema 2020-12, and what in a tree breaks it. */
public final class CaseSchema {
    private static final JsonSchema SCHEMA = schema();
    private static final Pattern TYPES = Pattern.compile("\\w+ found, \\[?([\\w, ]+)\\]? expected");
    private static final Map<String, String> NAMES = Map.of(
            "integer", "a whole number",
            "number", "a number",
            "string", "text",
            "boolean", "true or false",
            "array", "a list",
            "object", "an object");

    /** The schema as it is published. */
    public static String text() {
        try (InputStream file = CaseSchema.class.getResourceAsStream("/newel/case.schema.json")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonSchema schema() {
        try {
            JsonNode tree = new ObjectMapper().readTree(text());
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(tree);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One line a fault, in the order of the paths. */
    static List<String> faults(JsonNode tree) {
        return SCHEMA.validate(tree).stream()
                .map(ValidationMessage::getMessage)
                .map(CaseSchema::plain)
                .distinct()
                .sorted()
                .toList();
    }

    private static String plain(String message) {
        return types(message)
                .replaceFirst("property ('.*') is not defined in the schema.*", "$1 is not part of a case file")
                .replaceFirst("required property ('.*') not found", "$1 is missing")
                .replaceFirst("does not have a value in the enumeration", "must be one of")
                .replaceFirst("must have a minimum value of", "must be at least")
                .replaceFirst("must have a maximum value of", "must be at most")
                .replaceFirst("does not match the regex pattern .*", "must be a day such as 2026-03-01")
                .replaceFirst("must be the constant value", "must be");
    }

    private static String types(String message) {
        return TYPES.matcher(message)
                .replaceFirst(found -> "must be "
                        + Arrays.stream(found.group(1).split(", "))
                                .filter(type -> !type.equals("null"))
                                .map(type -> NAMES.getOrDefault(type, type))
                                .collect(Collectors.joining(" or ")));
    }

    private CaseSchema() {}
}
