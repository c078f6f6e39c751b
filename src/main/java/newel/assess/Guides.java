package newel.assess;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import newel.catalogue.Catalogue;
import newel.client.Done;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Part;
import newel.client.Quantity;
import newel.source.Rule;
import newel.source.Statement;

/** All tests, one file each. A faulty file stops the start, and every fault of every file is listed at once. */
public final class Guides {
    private static final YAMLMapper YAML = YAMLMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private static Guides shipped;

    private final Map<Measure, Guide> byMeasure = new EnumMap<>(Measure.class);
    private final SppbPoints points;

    private Guides(Collection<Guide> guides, SppbPoints points) {
        guides.forEach(guide -> byMeasure.put(guide.measure(), guide));
        this.points = points;
    }

    /** The shipped tests, read the first time they are asked for. */
    public static synchronized Guides shipped() {
        if (shipped == null) {
            shipped = read(Guides::file).following(Consensus.EUROPE);
        }
        return shipped;
    }

    /** Where the text of a file comes from. */
    interface Files {
        JsonNode read(String name);
    }

    static Guides read(Files files) {
        List<String> faults = new ArrayList<>();
        List<Guide> guides = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            String file = plain(measure) + ".yaml";
            Guide guide = GuideReader.read(new Mapping(file, files.read(file), faults));
            guides.add(guide);
            if (guide.measure() != measure) {
                faults.add(file + ": is about " + plain(guide.measure()));
            }
        }
        String file = "sppb-points.yaml";
        SppbPoints points = SppbPoints.read(new Mapping(file, files.read(file), faults));
        unique(guides, points, faults);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(String.join("\n", faults));
        }
        return new Guides(guides, points);
    }

    private static void unique(List<Guide> guides, SppbPoints points, List<String> faults) {
        Set<String> ids = new HashSet<>();
        rules(guides, points)
                .map(Rule::id)
                .filter(id -> !ids.add(id))
                .distinct()
                .forEach(id -> faults.add(id + ": two tables have this id"));
    }

    private static Stream<Rule> rules(Collection<Guide> guides, SppbPoints points) {
        Stream<Rule> own = guides.stream()
                .flatMap(guide -> Stream.concat(
                        guide.tables().stream().map(Table::rule),
                        guide.meaningful().stream().map(Meaningful::rule)));
        return Stream.concat(own, Stream.of(points.rule()));
    }

    /** As a practice reads them that follows a working group; as shipped, it is the European one. */
    public Guides following(Consensus group) {
        return new Guides(
                byMeasure.values().stream().map(each -> each.following(group)).toList(), points);
    }

    /** Every source that a result may rest on. */
    public List<Rule> rules() {
        return rules(byMeasure.values(), points).toList();
    }

    public List<Guide> all() {
        return List.copyOf(byMeasure.values());
    }

    /** The same with what each of them says. */
    public List<Statement> statements() {
        return Statements.of(byMeasure.values(), points);
    }

    public Guide of(Measure measure) {
        return byMeasure.get(measure);
    }

    /** Pictures that the catalogue does not hold, as {@code file: variant}. */
    public List<String> missingPictures(Catalogue catalogue) {
        return all().stream()
                .flatMap(guide -> guide.pictures().stream()
                        .filter(variant -> catalogue.variant(variant).isEmpty())
                        .map(variant -> plain(guide.measure()) + ".yaml: no variant " + variant))
                .toList();
    }

    /** A test in parts, with what its parts come to. */
    public Measured inParts(Measure measure, Map<Part, BigDecimal> parts, LocalDate on, Done done) {
        int sum = measure == Measure.SPPB ? sppb(parts).total() : FourStages.reached(parts);
        return new Measured(measure, new Quantity(BigDecimal.valueOf(sum), measure.unit()), on, done, parts);
    }

    public Sppb sppb(Map<Part, BigDecimal> parts) {
        return Sppb.of(points, parts);
    }

    private static String plain(Measure measure) {
        return measure.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static JsonNode file(String name) {
        try (InputStream file = Guides.class.getResourceAsStream(name)) {
            return file == null ? YAML.missingNode() : YAML.readTree(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
