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
import java.util.List;

/** The schema of a case file, JSON Schema 2020-12, and what in a tree breaks it. */
public final class CaseSchema {
    private static final JsonSchema SCHEMA = schema();

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
        return message.replaceFirst("property ('.*') is not defined in the schema.*", "$1 is not part of a case file")
                .replaceFirst("required property ('.*') not found", "$1 is missing")
                .replaceFirst("does not have a value in the enumeration", "must be one of")
                .replaceFirst("must be the constant value", "must be");
    }

    private CaseSchema() {}
}
