package newel.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import newel.People;
import newel.body.Side;
import newel.catalogue.Purpose;
import newel.catalogue.Region;
import newel.client.Aid;
import newel.client.Client;
import newel.client.Done;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Part;
import newel.client.Quantity;
import newel.client.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Results of one woman of 73 over time: which counts, how it changed, and where it says to begin. */
class CourseTest {
    private static final LocalDate BEFORE = LocalDate.of(2025, 12, 1);
    private static final LocalDate DAY = LocalDate.of(2026, 2, 20);

    /** Perera et al. 2006, J Am Geriatr Soc 54:743-749: 0.05 m/s small, 0.10 m/s substantial. */
    @ParameterizedTest
    @CsvSource({
        "0.80, 0.84, BETTER, TOO_SMALL",
        "0.80, 0.85, BETTER, SMALL",
        "0.80, 0.89, BETTER, SMALL",
        "0.80, 0.90, BETTER, SUBSTANTIAL",
        "0.80, 0.75, WORSE,  SMALL",
        "0.90, 0.80, WORSE,  SUBSTANTIAL",
        "0.80, 0.80, SAME,   TOO_SMALL"
    })
    void a_change_of_speed_is_held_against_the_published_one(
            double before, double after, Change.Way way, Change.Size size) {
        Change change =
                change(new Measured(Measure.GAIT_SPEED, before, BEFORE), new Measured(Measure.GAIT_SPEED, after, DAY));

        assertEquals(way, change.way());
        assertEquals(Optional.of(size), change.size());
    }

    /** From 10 s to 8 s over 4 m is from 0.4 to 0.5 m/s, exactly the substantial change. */
    @Test
    void a_timed_walk_changes_as_a_speed() {
        Change change = change(new Measured(Measure.WALK_4M, 10, BEFORE), new Measured(Measure.WALK_4M, 8, DAY));

        assertEquals(new Quantity(new BigDecimal("0.1"), Unit.METRES_PER_SECOND), change.by());
        assertEquals(Optional.of(Change.Size.SUBSTANTIAL), change.size());
        assertEquals(Change.Way.BETTER, change.way());
    }

    @Test
    void less_time_is_better_and_nothing_is_called_meaningful_without_a_published_figure() {
        Change change =
                change(new Measured(Measure.UP_AND_GO_3M, 12, BEFORE), new Measured(Measure.UP_AND_GO_3M, 10.5, DAY));

        assertEquals(Change.Way.BETTER, change.way());
        assertEquals("-1.5", change.by().number());
        assertEquals(Optional.empty(), change.size());
    }

    @Test
    void what_could_be_done_at_last_is_better_and_the_other_way_round() {
        Measured could = new Measured(Measure.UP_AND_GO_3M, 40, DAY);

        assertEquals(
                Change.Way.BETTER,
                change(unable(Measure.UP_AND_GO_3M, BEFORE), could).way());
        assertEquals(
                Change.Way.WORSE,
                change(new Measured(Measure.UP_AND_GO_3M, 40, BEFORE), unable(Measure.UP_AND_GO_3M, DAY))
                        .way());
    }

    @Test
    void another_side_another_aid_and_another_course_are_not_compared() {
        assertEquals(Optional.empty(), none(grip(20, BEFORE, Side.LEFT), grip(22, DAY, Side.RIGHT)));
        assertEquals(
                Optional.empty(),
                none(
                        new Measured(Measure.WALK_4M, seconds(6), BEFORE, new Done(false, false, null, Aid.FRAME)),
                        new Measured(Measure.WALK_4M, 5, DAY)));
        assertEquals(Optional.empty(), none(battery(4, BEFORE), battery(3, DAY)));
        assertEquals(
                Change.Way.BETTER,
                change(grip(20, BEFORE, Side.LEFT), grip(22, DAY, Side.LEFT)).way());
    }

    @Test
    void of_one_day_the_better_side_counts_and_else_what_was_entered_last() {
        assertEquals(
                "22",
                course(grip(22, DAY, Side.LEFT), grip(18, DAY, Side.RIGHT))
                        .newest(Measure.GRIP)
                        .orElseThrow()
                        .score()
                        .number());
        assertEquals(
                "9",
                course(
                                new Measured(Measure.CHAIR_STAND_30S, 11, DAY),
                                new Measured(Measure.CHAIR_STAND_30S, 9, DAY),
                                new Measured(Measure.CHAIR_STAND_30S, 14, BEFORE))
                        .newest(Measure.CHAIR_STAND_30S)
                        .orElseThrow()
                        .score()
                        .number());
    }

    @Test
    void what_could_not_be_done_is_worse_than_every_figure() {
        Result result = course(unable(Measure.UP_AND_GO_8FT, DAY))
                .newest(Measure.UP_AND_GO_8FT)
                .orElseThrow();

        assertEquals(
                List.of("BELOW", "RISK_ZONE", "BELOW_CRITERION"),
                result.verdicts().stream().map(each -> each.says().code()).toList());
    }

    /** Women of 73: usual 10 to 15 stands, 12 to 17 curls, 68 to 101 steps (Rikli and Jones 1999). */
    @ParameterizedTest
    @CsvSource({"9, EASY", "10, USUAL", "15, USUAL", "16, FURTHER"})
    void legs_begin_by_the_chair_stand(int stands, Start start) {
        StartingLevels levels = levels(new Measured(Measure.CHAIR_STAND_30S, stands, DAY));

        assertEquals(start, levels.of(Purpose.LEGS).orElseThrow().start());
        assertEquals(start, levels.of(Purpose.HIPS).orElseThrow().start());
        assertEquals(Optional.empty(), levels.of(Purpose.ARMS));
    }

    @Test
    void balance_never_begins_further_and_begins_easy_when_heel_to_toe_is_not_held() {
        assertEquals(Start.USUAL, balance("10", "10", "10", "10"));
        assertEquals(Start.EASY, balance("10", "10", "9.9"));
        assertEquals(
                Start.USUAL,
                levels(new Measured(Measure.UP_AND_GO_8FT, 4, DAY))
                        .of(Purpose.BALANCE)
                        .orElseThrow()
                        .start(),
                "quicker than three in four");
    }

    @Test
    void reaches_say_where_mobility_begins() {
        StartingLevels levels = levels(new Measured(
                Measure.BACK_SCRATCH,
                new Quantity(new BigDecimal("-14"), Unit.CENTIMETRES),
                DAY,
                new Done(false, false, Side.LEFT, Aid.NONE)));

        assertEquals(Start.EASY, levels.of(Region.SHOULDER).orElseThrow().start());
        assertEquals(Map.of(), levels.byPurpose());
    }

    @Test
    void the_lowest_of_several_results_decides_and_is_the_one_that_is_named() {
        StartingLevels levels =
                levels(new Measured(Measure.CHAIR_STAND_30S, 16, DAY), new Measured(Measure.CHAIR_STAND_5X, 15.1, DAY));

        StartingLevel legs = levels.of(Purpose.LEGS).orElseThrow();
        assertEquals(Start.EASY, legs.start());
        assertEquals(
                List.of("Five chair stands: low strength by the European working group."),
                legs.because().stream().map(each -> each.text()).toList());
    }

    @Test
    void an_old_result_lowers_and_does_not_raise() {
        LocalDate old = People.TODAY.minusWeeks(27);

        assertEquals(Start.USUAL, legs(new Measured(Measure.CHAIR_STAND_30S, 20, old)));
        assertEquals(Start.EASY, legs(new Measured(Measure.CHAIR_STAND_30S, 5, old)));
        assertEquals(Start.FURTHER, legs(new Measured(Measure.CHAIR_STAND_30S, 20, People.TODAY.minusWeeks(26))));
    }

    private static Start legs(Measured measured) {
        return levels(measured).of(Purpose.LEGS).orElseThrow().start();
    }

    private static Start balance(String... seconds) {
        Map<Part, BigDecimal> parts = new java.util.EnumMap<>(Part.class);
        for (int i = 0; i < seconds.length; i++) {
            parts.put(FourStages.STANCES.get(i), new BigDecimal(seconds[i]));
        }
        return levels(Guides.shipped().inParts(Measure.FOUR_STAGE_BALANCE, parts, DAY, Done.AS_TOLD))
                .of(Purpose.BALANCE)
                .orElseThrow()
                .start();
    }

    private static StartingLevels levels(Measured... measures) {
        return StartingLevels.of(course(measures), People.TODAY);
    }

    private static Change change(Measured before, Measured after) {
        return none(before, after).orElseThrow();
    }

    private static Optional<Change> none(Measured before, Measured after) {
        Course course = course(before, after);
        return course.change(course.of(after.measure()).getLast());
    }

    private static Measured battery(int metres, LocalDate on) {
        return Guides.shipped()
                .inParts(
                        Measure.SPPB,
                        Map.of(Part.COURSE, BigDecimal.valueOf(metres), Part.WALK, BigDecimal.valueOf(5)),
                        on,
                        Done.AS_TOLD);
    }

    private static Measured grip(int kilograms, LocalDate on, Side side) {
        return new Measured(
                Measure.GRIP, Quantity.of(kilograms, Unit.KILOGRAMS), on, new Done(false, false, side, Aid.NONE));
    }

    private static Measured unable(Measure measure, LocalDate on) {
        return new Measured(measure, Quantity.of(0, measure.unit()), on, new Done(true, false, null, Aid.NONE));
    }

    private static Quantity seconds(int amount) {
        return Quantity.of(amount, Unit.SECONDS);
    }

    private static Course course(Measured... measures) {
        return Course.of(Guides.shipped(), with(Stream.of(measures).toList()));
    }

    static Client with(List<Measured> measures) {
        Client c = People.painfulShoulder();
        return new Client(
                c.id(),
                c.profile(),
                c.home(),
                c.wishes(),
                c.readiness(),
                c.falls(),
                c.vitals(),
                measures,
                c.limitations());
    }
}
