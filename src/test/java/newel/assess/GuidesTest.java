package newel.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import newel.Shipped;
import newel.client.Measure;
import newel.client.Part;
import newel.client.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The data files of tests: what is shipped, and what a slip of the pen is told. */
class GuidesTest {
    private static final YAMLMapper YAML = YAMLMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    @Test
    void every_test_says_how_it_is_run_when_to_stop_and_for_whom_it_is_not() {
        assertEquals(
                List.of(Measure.values()),
                Guides.shipped().all().stream().map(Guide::measure).toList());
        for (Guide guide : Guides.shipped().all()) {
            HowTo how = guide.how();
            Stream.of(how.setUp(), how.say(), how.count(), how.stop(), how.notFor())
                    .forEach(words ->
                            assertTrue(!words.isEmpty(), guide.measure().name()));
        }
        assertEquals(List.of(), Guides.shipped().missingPictures(Shipped.CATALOGUE));
    }

    @Test
    void every_table_is_held_by_a_source_and_names_its_people() {
        Guides.shipped().all().stream()
                .flatMap(guide -> guide.tables().stream())
                .forEach(table -> {
                    assertTrue(
                            table.rule().citation().length() > 8, table.rule().id());
                    assertTrue(table.population().length() > 8, table.rule().id());
                });
    }

    @Test
    void faults_of_all_files_are_listed_at_once() {
        Map<String, String[]> slips = Map.of(
                "grip.yaml", new String[] {"citation: \"Bhasin", "quotation: \"Bhasin"},
                "chair-stand-30s.yaml", new String[] {"women: [12, 17]", "women: [17, 12]"},
                "walk-6min.yaml", new String[] {"ages: 85-89, women: [340, 510]", "ages: 85-88, women: [340, 510]"},
                "up-and-go-3m.yaml", new String[] {"compare: more", "compare: less"},
                "sppb.yaml", new String[] {"id: awgs-sppb", "id: ewgsop2-sppb"},
                "arm-curl-30s.yaml", new String[] {"known: seen", "known: heard"});

        IllegalStateException stop = assertThrows(
                IllegalStateException.class,
                () -> Guides.read(name -> slips.containsKey(name)
                        ? tree(text(name).replaceFirst(Pattern.quote(slips.get(name)[0]), slips.get(name)[1]))
                        : tree(text(name))));

        assertEquals(
                List.of(
                        "chair-stand-30s.yaml: sft-chair-stand: the ends of a range are the wrong way round: 17, 12",
                        "arm-curl-30s.yaml, sft-arm-curl: known is not known: heard",
                        "up-and-go-3m.yaml: wfg-up-and-go: it flags the better side",
                        "grip.yaml, sdoc-grip: has no citation",
                        "grip.yaml, sdoc-grip: quotation is not a known key",
                        "walk-6min.yaml: sft-walk-6min: no row for age 89",
                        "ewgsop2-sppb: two tables have this id"),
                Arrays.asList(stop.getMessage().split("\n")));
    }

    /** Podsiadlo and Richardson 1991; Guralnik et al. 1995; Perry et al. 1995: both sides of every grade. */
    @ParameterizedTest
    @CsvSource({
        "UP_AND_GO_3M, podsiadlo-up-and-go, 9.99 FREE 10 MOSTLY_INDEPENDENT 19.99 MOSTLY_INDEPENDENT 20 VARIABLE 29.99 VARIABLE 30 DEPENDENT",
        "SPPB, guralnik-sppb, 0 SEVERE 3 SEVERE 4 MODERATE 6 MODERATE 7 MILD 9 MILD 10 MINIMAL 12 MINIMAL",
        "GAIT_SPEED, perry-gait, 0.39 HOUSEHOLD 0.4 LIMITED_COMMUNITY 0.8 LIMITED_COMMUNITY 0.81 COMMUNITY"
    })
    void a_grade_begins_where_its_source_says(Measure measure, String rule, String pairs) {
        Guide guide = Guides.shipped().of(measure);
        Scale scale = guide.scales().stream()
                .filter(each -> each.rule().id().equals(rule))
                .findFirst()
                .orElseThrow();
        String[] each = pairs.split(" ");
        for (int i = 0; i < each.length; i += 2) {
            Verdict verdict = Judging.by(scale, guide, new BigDecimal(each[i]), 74, Sex.FEMALE);
            assertEquals(each[i + 1], verdict.says().code(), each[i]);
        }
    }

    static Stream<Arguments> points() {
        return Stream.of(
                // Guralnik et al. 2000, J Gerontol A 55:M221-M231 for 4 m; 1994, J Gerontol 49:M85-M94 for 3 m.
                Arguments.of("4 m", "4.81 4 4.82 3 6.20 3 6.21 2 8.70 2 8.71 1 60 1"),
                Arguments.of("3 m", "3.61 4 3.62 3 4.65 3 4.66 2 6.52 2 6.53 1 60 1"),
                Arguments.of("stands", "11.19 4 11.20 3 13.69 3 13.70 2 16.69 2 16.70 1 60 1 60.01 0 61 0"),
                Arguments.of("tandem", "0 2 2.99 2 3.00 3 9.99 3 10 4 12 4"));
    }

    @ParameterizedTest
    @MethodSource("points")
    void each_course_and_each_part_of_the_battery_has_its_own_points(String what, String pairs) {
        String[] each = pairs.split(" ");
        for (int i = 0; i < each.length; i += 2) {
            assertEquals(Integer.parseInt(each[i + 1]), scored(what, each[i]), what + " " + each[i]);
        }
    }

    private static int scored(String what, String seconds) {
        BigDecimal time = new BigDecimal(seconds);
        BigDecimal ten = BigDecimal.TEN;
        return switch (what) {
            case "stands" -> Guides.shipped().sppb(Map.of(Part.STANDS, time)).stands();
            case "tandem" ->
                Guides.shipped()
                        .sppb(Map.of(Part.SIDE_BY_SIDE, ten, Part.SEMI_TANDEM, ten, Part.TANDEM, time))
                        .balance();
            default ->
                Guides.shipped()
                        .sppb(Map.of(Part.COURSE, new BigDecimal(what.substring(0, 1)), Part.WALK, time))
                        .walk();
        };
    }

    private static JsonNode tree(String text) {
        try {
            return YAML.readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(String name) {
        try (InputStream file = Guides.class.getResourceAsStream(name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
