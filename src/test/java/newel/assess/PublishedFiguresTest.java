package newel.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import newel.client.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure that is held, written down a second time as its table prints it, and every result near it judged a second
 * time by plain whole numbers. One line a table:
 *
 * <p>rule | kind | ages | women | men. Kind is {@code range up} or {@code range down} (less is better), or the comparison that
 * flags. {@code =} in place of men says that the figures are for both.
 */
class PublishedFiguresTest {
    private static final String TABLES = """
            # Rikli and Jones 1999, J Aging Phys Act 7:162-181: 25th and 75th centile
            sft-chair-stand | range up | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 12,17 11,16 10,15 10,15 9,14 8,13 4,11 | 14,19 12,18 12,17 11,17 10,15 8,14 7,12
            sft-arm-curl | range up | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 13,19 12,18 12,17 11,17 10,16 10,15 8,13 | 16,22 15,21 14,21 13,19 13,19 11,17 10,14
            sft-step | range up | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 75,107 73,107 68,101 68,100 60,90 55,85 44,72 | 87,115 86,116 80,110 73,109 71,103 59,91 52,86
            sft-chair-reach | range up | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | -0.5,5.0 -0.5,4.5 -1.0,4.0 -1.5,3.5 -2.0,3.0 -2.5,2.5 -4.5,1.0 | -2.5,4.0 -3.0,3.0 -3.0,3.0 -4.0,2.0 -5.5,1.5 -5.5,0.5 -6.5,-0.5
            sft-back-scratch | range up | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | -3.0,1.5 -3.5,1.5 -4.0,1.0 -5.0,0.5 -5.5,0.0 -7.0,-1.0 -8.0,-1.0 | -6.5,0.0 -7.5,-1.0 -8.0,-1.0 -9.0,-2.0 -9.5,-2.0 -9.5,-3.0 -10.5,-4.0
            sft-up-and-go | range down | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 6.0,4.4 6.4,4.8 7.1,4.9 7.4,5.2 8.7,5.7 9.6,6.2 11.5,7.3 | 5.6,3.8 5.9,4.3 6.2,4.4 7.2,4.6 7.6,5.2 8.9,5.5 10.0,6.2
            sft-walk-6min | range up | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 545,660 500,635 480,615 435,585 385,540 340,510 275,440 | 610,735 560,700 545,680 470,640 445,605 380,570 305,500
            # Senior Fitness Test Manual: zone that goes with losing mobility
            sft-chair-stand-risk | < | any | 8 | =
            sft-arm-curl-risk | < | any | 11 | =
            sft-step-risk | < | any | 65 | =
            sft-chair-reach-risk | <= | any | -2 | -4
            sft-back-scratch-risk | <= | any | -4 | -8
            sft-up-and-go-risk | > | any | 9 | =
            sft-walk-6min-risk | < | any | 350 | =
            # Rikli and Jones 2013, Gerontologist 53:255-267
            criterion-chair-stand | < | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 15 15 14 13 12 11 9 | 17 16 15 14 13 11 9
            criterion-arm-curl | < | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 17 17 16 15 14 13 11 | 19 18 17 16 15 13 11
            criterion-step | < | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 97 93 89 84 78 70 60 | 106 101 95 88 80 71 60
            criterion-up-and-go | > | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 5.0 5.3 5.6 6.0 6.5 7.1 8.0 | 4.8 5.1 5.5 5.9 6.4 7.1 8.0
            criterion-walk-6min | < | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 625 605 580 550 510 460 400 | 680 650 620 580 530 470 400
            # CDC 2017, STEADI assessments
            steadi-chair-stand | < | 60-64 65-69 70-74 75-79 80-84 85-89 90-94 | 12 11 10 10 9 8 4 | 14 12 12 11 10 8 7
            steadi-up-and-go | >= | any | 12 | =
            steadi-four-stage | < | any | 3 | =
            steadi-tandem | < | any | 10 | =
            # up and go: Bohannon 2006; Shumway-Cook et al. 2000; Montero-Odasso et al. 2022; 2024, afae192; EWGSOP2 2019
            bohannon-up-and-go | range down | 60-69 70-79 80-99 | 9.0,7.1 10.2,8.2 12.7,10.0 | =
            shumway-cook-up-and-go | >= | any | 13.5 | =
            wfg-up-and-go | > | any | 15 | =
            wfg-modified-up-and-go | > | any | 10 | =
            ewgsop2-up-and-go | >= | any | 20 | =
            # four square step: Dite and Temple 2002; Whitney 2007; Duncan 2013; Blennerhassett 2008; Dite 2007
            dite-four-square | > | 66-130 | 15 | =
            whitney-four-square | > | any | 12 | =
            duncan-four-square | > | any | 9.68 | =
            blennerhassett-four-square | > | any | 15 | =
            dite-amputation-four-square | > | any | 24 | =
            # one leg: Springer et al. 2007; Bohannon 2006; Vellas et al. 1997; Araujo et al. 2022
            springer-open-mean | < | 18-39 40-49 50-59 60-69 70-79 80-99 | 43.3 40.3 37.0 26.9 15.0 6.2 | =
            springer-open-mean-by-sex | < | 18-39 40-49 50-59 60-69 70-79 80-99 | 43.5 40.4 36.0 25.1 11.3 7.4 | 43.2 40.1 38.1 28.7 18.3 5.6
            springer-open-best | < | 18-39 40-49 50-59 60-69 70-79 80-99 | 44.7 41.9 41.2 32.1 21.5 9.4 | =
            springer-closed-mean | < | 18-39 40-49 50-59 60-69 70-79 80-99 | 9.4 7.3 4.8 2.8 2.0 1.3 | =
            springer-closed-best | < | 18-39 40-49 50-59 60-69 70-79 80-99 | 15.2 13.0 8.3 4.4 3.1 1.9 | =
            bohannon-one-leg | < | 60-69 70-79 80-99 | 27.0 17.2 8.5 | =
            vellas-one-leg | < | any | 5 | =
            araujo-one-leg | < | 51-75 | 10 | =
            # walking speed: EWGSOP2 2019; Cesari et al. 2005; PMC10605995; AWGS 2019
            ewgsop2-gait | <= | any | 0.8 | =
            cesari-gait | < | any | 1.0 | =
            very-slow-gait | < | any | 0.6 | =
            awgs-gait | < | any | 1.0 | =
            # five chair stands: EWGSOP2 2019; AWGS 2019; Buatois et al.; Bohannon 2006
            ewgsop2-chair-stand-5x | > | any | 15 | =
            awgs-chair-stand-5x | >= | any | 12 | =
            buatois-chair-stand-5x | > | any | 15 | =
            bohannon-chair-stand-5x | > | 60-69 70-79 80-89 | 11.4 12.6 14.8 | =
            # grip: EWGSOP2 2019; AWGS 2019; SDOC 2020
            ewgsop2-grip | < | any | 16 | 27
            awgs-grip | < | any | 18 | 28
            sdoc-grip | < | any | 20 | 35.5
            # short battery: EWGSOP2 2019; AWGS 2019
            ewgsop2-sppb | <= | any | 8 | =
            awgs-sppb | <= | any | 9 | =
            """;

    /** One figure as printed. */
    record Printed(String rule, String kind, int from, int to, Sex sex, String figures) {
        @Override
        public String toString() {
            return rule + " " + from + "-" + to + " " + sex;
        }
    }

    static List<Printed> printed() {
        List<Printed> all = new ArrayList<>();
        TABLES.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
            String[] part = line.split("\\s*\\|\\s*");
            String[] ages = part[2].split(" ");
            for (int i = 0; i < ages.length; i++) {
                int from = ages[i].equals("any") ? 0 : Integer.parseInt(ages[i].split("-")[0]);
                int to = ages[i].equals("any") ? 130 : Integer.parseInt(ages[i].split("-")[1]);
                String women = part[3].split(" ")[i];
                String men = part[4].equals("=") ? women : part[4].split(" ")[i];
                all.add(new Printed(part[0], part[1], from, to, Sex.FEMALE, women));
                all.add(new Printed(part[0], part[1], from, to, Sex.MALE, men));
            }
        });
        return all;
    }

    @Test
    void every_table_that_is_held_is_written_down_here() {
        TreeSet<String> held = new TreeSet<>();
        tables().filter(table -> !(table instanceof Scale))
                .forEach(table -> held.add(table.rule().id()));
        TreeSet<String> here = new TreeSet<>();
        printed().forEach(each -> here.add(each.rule()));

        assertEquals(here, held);
    }

    @ParameterizedTest
    @MethodSource("printed")
    void the_data_hold_the_printed_figure_at_both_ends_of_its_ages(Printed printed) {
        for (int age : List.of(printed.from(), printed.to())) {
            Row row = table(printed.rule()).row(age, printed.sex()).orElseThrow();
            List<BigDecimal> figures =
                    printed.figures().contains(",") ? List.of(row.worse(), row.better()) : List.of(row.worse());

            assertEquals(hundredths(printed.figures()), hundredths(figures));
            assertEquals(new Ages(printed.from(), printed.to()), row.ages());
        }
    }

    static Stream<Arguments> near() {
        return printed().stream()
                .flatMap(printed -> Stream.of(printed.figures().split(","))
                        .flatMap(figure -> Stream.of(-1, 0, 1)
                                .map(by ->
                                        Arguments.of(printed, hundredths(figure).getFirst() + by))));
    }

    /** The second judgement: whole hundredths, no tables, no units. */
    @ParameterizedTest(name = "{0} at {1} hundredths")
    @MethodSource("near")
    void on_both_sides_of_every_figure_and_on_it_the_verdict_is_the_naive_one(Printed printed, int value) {
        Table table = table(printed.rule());
        Guide guide = guide(printed.rule());

        for (int age : List.of(printed.from(), printed.to())) {
            Verdict verdict = Judging.by(table, guide, BigDecimal.valueOf(value, 2), age, printed.sex());

            assertEquals(naive(printed, value), told(verdict), "age " + age);
        }
    }

    @ParameterizedTest
    @MethodSource("printed")
    void outside_the_ages_of_a_table_nothing_is_said(Printed printed) {
        Table table = table(printed.rule());
        int youngest =
                table.rows().stream().mapToInt(row -> row.ages().from()).min().orElseThrow();
        int oldest =
                table.rows().stream().mapToInt(row -> row.ages().to()).max().orElseThrow();
        if (youngest == 0) {
            return;
        }
        for (int age : List.of(youngest - 1, oldest + 1)) {
            assertEquals(
                    "NO_NORM",
                    Judging.by(table, guide(printed.rule()), BigDecimal.ONE, age, printed.sex())
                            .says()
                            .code());
        }
    }

    private static String naive(Printed printed, int value) {
        List<Integer> figures = hundredths(printed.figures());
        int first = figures.getFirst();
        int last = figures.getLast();
        return switch (printed.kind()) {
            case "range up" -> value < first ? "BELOW" : value > last ? "ABOVE" : "WITHIN";
            case "range down" -> value > first ? "BELOW" : value < last ? "ABOVE" : "WITHIN";
            case "<" -> value < first ? "flag" : "clear";
            case "<=" -> value <= first ? "flag" : "clear";
            case ">" -> value > first ? "flag" : "clear";
            case ">=" -> value >= first ? "flag" : "clear";
            default -> throw new AssertionError(printed.kind());
        };
    }

    private static String told(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Placed placed -> placed.place().name();
            case Verdict.Judged judged -> judged.flagged() ? "flag" : "clear";
            case Verdict.Graded graded -> graded.says().code();
            case Verdict.NoNorm none -> none.says().code();
        };
    }

    private static List<Integer> hundredths(String figures) {
        return hundredths(Stream.of(figures.split(",")).map(BigDecimal::new).toList());
    }

    private static List<Integer> hundredths(List<BigDecimal> figures) {
        return figures.stream()
                .map(each -> each.movePointRight(2).intValueExact())
                .toList();
    }

    private static Stream<Table> tables() {
        return Guides.shipped().all().stream().flatMap(guide -> guide.tables().stream());
    }

    private static Table table(String rule) {
        return tables().filter(each -> each.rule().id().equals(rule))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no table " + rule));
    }

    private static Guide guide(String rule) {
        return Guides.shipped().all().stream()
                .filter(guide -> guide.tables().stream()
                        .anyMatch(each -> each.rule().id().equals(rule)))
                .findFirst()
                .orElseThrow();
    }
}
