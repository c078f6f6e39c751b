package newel.catalogue;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the catalogue's files, one a movement, in the order of their names. */
public final class Catalogues {
    private static final YAMLMapper YAML = YAMLMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .build();

    /** What the catalogue says about itself; it lies beside the movements. */
    private static final String ABOUT = "/newel/catalogue/about.txt";

    /** The shipped catalogue. */
    public static ReadCatalogue read() {
        try {
            URI uri = Catalogues.class.getResource(ABOUT).toURI();
            if (!uri.getScheme().equals("jar")) {
                return read(Path.of(uri).getParent());
            }
            try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
                return read(jar.getPath(ABOUT).getParent());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What the catalogue says about itself. */
    public static String about() {
        try (InputStream about = Catalogues.class.getResourceAsStream(ABOUT)) {
            return new String(about.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static ReadCatalogue read(Path folder) {
        List<ReadMovement> read =
                yamlIn(folder).parallelStream().map(Catalogues::movement).toList();
        List<Movement> movements =
                read.stream().flatMap(each -> each.movement().stream()).toList();
        List<Flaw> flaws = Stream.concat(
                        UniqueIds.flaws(movements), read.stream().flatMap(each -> each.flaws().stream()))
                .toList();
        return flaws.isEmpty() ? new ReadCatalogue.Sound(new Catalogue(movements)) : new ReadCatalogue.Broken(flaws);
    }

    /** One file's movement, if it could be read at all, and what is wrong with it. */
    private record ReadMovement(Optional<Movement> movement, List<Flaw> flaws) {}

    /** Rules on the body run only where the movement itself could be read. */
    private static ReadMovement movement(Path file) {
        List<Flaw> flaws = new ArrayList<>();
        Optional<Movement> movement = tree(file, flaws).map(node -> MovementReader.read(name(file), node, flaws));
        boolean halfRead = !flaws.isEmpty();
        movement.ifPresent(each -> {
            Rule.broken(each).forEach(flaws::add);
            if (!halfRead) {
                BodyRule.broken(each).forEach(flaws::add);
            }
        });
        return new ReadMovement(movement, flaws);
    }

    private static List<Path> yamlIn(Path folder) {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<JsonNode> tree(Path file, List<Flaw> flaws) {
        try {
            return Optional.of(YAML.readTree(Files.readString(file)));
        } catch (JsonProcessingException e) {
            flaws.add(new Flaw(
                    name(file), "", "line " + e.getLocation().getLineNr() + ": " + inOneLine(e.getOriginalMessage())));
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The reader's message without its picture of the place. */
    private static String inOneLine(String message) {
        return message.lines().filter(line -> !line.startsWith(" ")).collect(Collectors.joining("; "));
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    private Catalogues() {}
}
