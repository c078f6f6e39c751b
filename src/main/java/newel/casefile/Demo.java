package newel.casefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import newel.assess.Consensus;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.Contact;
import newel.client.Profile;
import newel.client.TextSize;
import newel.limit.Presets;
import newel.practice.Country;
import newel.practice.Instructor;
import newel.practice.Settings;
import newel.screen.Choices;

/**
 * The demo practice: invented people of very different limits, the same that tests and pictures use. Each has a case file;
 * who they are stands in the practice's own file.
 */
public final class Demo {
    private static final List<String> PEOPLE = List.of(
            "odile-marchbanks",
            "ambrose-quill",
            "benedetta-holloway",
            "casimir-dunmore",
            "dagny-ashworth",
            "ephraim-bright",
            "fenella-moss",
            "gideon-larkspur");

    private static final ObjectMapper JSON = new ObjectMapper();

    public static List<Client> clients(Presets presets, LocalDate today) {
        return PEOPLE.stream().map(slug -> client(slug, presets, today)).toList();
    }

    /** @param slug the file's name without its ending */
    public static Client client(String slug, Presets presets, LocalDate today) {
        return switch (new CaseReader(presets, today).read(tree(slug))) {
            case ReadCase.Read read ->
                named(slug, read.client(), tree("practice").get("people").get(slug));
            case ReadCase.Faulty faulty ->
                throw new IllegalStateException(slug + ":\n" + String.join("\n", faulty.faults()));
        };
    }

    /** The demo practice itself, which works by the strict choices. */
    public static Settings settings() {
        JsonNode practice = tree("practice");
        return new Settings(
                practice.get("hall").asText(),
                practice.get("street").asText(),
                practice.get("phone").asText(),
                practice.get("email").asText(),
                Country.of(practice.get("country").asText()).orElseThrow(),
                new Instructor(
                        practice.get("instructor").asText(),
                        practice.get("role").asText(),
                        practice.get("qualification").asText(),
                        ""),
                Choices.strict(),
                Consensus.EUROPE);
    }

    private static Client named(String slug, Client c, JsonNode identity) {
        JsonNode call = identity.get("toCall");
        Profile profile = new Profile(
                identity.get("name").asText(),
                LocalDate.parse(identity.get("birthDate").asText()),
                c.profile().sex(),
                c.profile().statureCm(),
                c.profile().massKg(),
                TextSize.valueOf(identity.get("textSize").asText().toUpperCase(Locale.ROOT)),
                null,
                new Contact(call.get("name").asText(), call.get("phone").asText()));
        return new Client(
                new ClientId(slug),
                profile,
                c.home(),
                c.wishes(),
                c.readiness(),
                c.falls(),
                c.vitals(),
                c.measures(),
                c.limitations());
    }

    private static JsonNode tree(String slug) {
        try (InputStream file = Demo.class.getResourceAsStream("/demo-data/" + slug + ".json")) {
            return JSON.readTree(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Demo() {}
}
