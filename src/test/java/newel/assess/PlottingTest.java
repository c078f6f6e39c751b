package newel.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import newel.client.Aid;
import newel.client.Client;
import newel.client.Done;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Profile;
import newel.client.Quantity;
import newel.client.Sex;
import newel.client.TextSize;
import newel.client.Unit;
import org.junit.jupiter.api.Test;

/** Where things stand in a plot, checked by counting up from its own axis. */
class PlottingTest {
    private static final LocalDate BORN = LocalDate.of(1951, 3, 1);
    private static final Profile WOMAN = new Profile("", BORN, Sex.FEMALE, 160, null, TextSize.LARGE, null, null);

    @Test
    void results_range_and_cut_offs_stand_at_their_figures_on_the_axis() {
        Plot plot = plot(
                new Measured(Measure.CHAIR_STAND_30S, 9, LocalDate.of(2025, 3, 10)),
                new Measured(Measure.CHAIR_STAND_30S, 12, LocalDate.of(2025, 9, 10)));

        // Women 70-74: usual 10 to 15, A under 10, B under 8 (Rikli and Jones 1999; CDC 2017).
        assertEquals(
                List.of(at(plot, 9), at(plot, 12)),
                plot.dots().stream().map(Plot.Dot::y).toList());
        assertEquals(
                List.of("9", "12"), plot.dots().stream().map(Plot.Dot::label).toList());
        assertEquals(1, plot.bands().stream().map(Plot.Band::y).distinct().count(), "no new age band");
        assertEquals(at(plot, 15), plot.bands().getFirst().y(), 0.001);
        assertEquals(
                at(plot, 10),
                plot.bands().getFirst().y() + plot.bands().getFirst().height(),
                0.001);
        assertEquals(
                List.of("A " + at(plot, 10), "B " + at(plot, 8)),
                plot.cuts().stream()
                        .map(cut -> cut.letter() + " " + cut.y())
                        .distinct()
                        .toList());
        assertEquals("stands", plot.unit());
    }

    @Test
    void the_range_steps_on_the_birthday_that_leads_into_the_next_age_band() {
        // She turns 75 on 1 March 2026; 80-84 begins in 2031. 74 to 75 changes nothing in stands, but in walked yards.
        Plot plot = plot(
                new Measured(Measure.WALK_6MIN, 500, BORN.plusYears(75).minusDays(100)),
                new Measured(Measure.WALK_6MIN, 500, BORN.plusYears(75).plusDays(100)));

        double step = plot.bands().get(1).x();
        assertEquals((plot.dots().getFirst().x() + plot.dots().getLast().x()) / 2, step, 0.001);
        assertEquals(at(plot, 615), plot.bands().getFirst().y(), 0.001);
        assertEquals(at(plot, 585), plot.bands().getLast().y(), 0.001);
    }

    @Test
    void what_could_not_be_done_stands_at_the_worse_edge() {
        LocalDate day = LocalDate.of(2025, 6, 1);
        Plot slow = plot(unable(Measure.UP_AND_GO_3M, day), new Measured(Measure.UP_AND_GO_3M, 14, day.plusDays(90)));
        Plot few = plot(unable(Measure.ARM_CURL_30S, day), new Measured(Measure.ARM_CURL_30S, 14, day.plusDays(90)));

        assertEquals(Plot.TOP, slow.dots().getFirst().y());
        assertEquals(Plot.BOTTOM, few.dots().getFirst().y());
        assertEquals("could not", slow.dots().getFirst().label());
        assertEquals(1, slow.way().split(" ").length, "the way passes only what has a figure");
    }

    @Test
    void it_tells_in_words_what_it_shows() {
        Plot plot = plot(
                new Measured(Measure.WALK_4M, 5, LocalDate.of(2025, 3, 10)),
                new Measured(Measure.WALK_4M, 4, LocalDate.of(2025, 9, 10)));

        assertEquals("4-metre walk over time", plot.title());
        assertEquals("10 Mar 25: 0.8 m/s; 10 Sep 25: 1 m/s. Higher is better.", plot.description());
        assertEquals(
                List.of("10 Mar 25", "10 Sep 25"),
                plot.across().stream().map(Plot.Tick::words).toList());
    }

    @Test
    void everything_is_inside_and_written_with_a_point_whatever_the_language() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.GERMANY);
        try {
            Measured inCentimetres = new Measured(
                    Measure.CHAIR_REACH, Quantity.of(-7.5, Unit.CENTIMETRES), LocalDate.of(2025, 3, 10), Done.AS_TOLD);
            Plot plot = plot(inCentimetres);

            Stream.concat(
                            plot.dots().stream().map(Plot.Dot::y),
                            plot.up().stream().map(Plot.Tick::at))
                    .forEach(y -> assertTrue(y >= Plot.TOP - 0.001 && y <= Plot.BOTTOM + 0.001, "" + y));
            assertTrue(plot.dots().getFirst().yText().matches("\\d+(\\.\\d)?"));
            assertEquals("-7.5", plot.dots().getFirst().label());
            assertEquals("cm", plot.unit());
            assertTrue(plot.description().startsWith("10 Mar 25: -7.5 cm"), plot.description());
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Counted from two ticks of the axis, so that the plot's own arithmetic is not used. */
    private static double at(Plot plot, double figure) {
        Plot.Tick low = plot.up().getFirst();
        Plot.Tick high = plot.up().getLast();
        double from = Double.parseDouble(low.words());
        double to = Double.parseDouble(high.words());
        return low.at() + (high.at() - low.at()) * (figure - from) / (to - from);
    }

    private static Measured unable(Measure measure, LocalDate day) {
        return new Measured(measure, Quantity.of(0, measure.unit()), day, new Done(true, false, null, Aid.NONE));
    }

    private static Plot plot(Measured... measures) {
        Client c = CourseTest.with(List.of(measures));
        Client woman = new Client(
                c.id(), WOMAN, c.home(), c.wishes(), c.readiness(), c.falls(), c.vitals(), c.measures(), List.of());
        Course course = Course.of(Guides.shipped(), woman);
        return Plotting.of(WOMAN, Guides.shipped(), course.of(measures[0].measure()));
    }
}
