package newel.limit;

import static newel.Shipped.FITTING;
import static newel.Shipped.variant;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import newel.Shipped;
import newel.body.Motion;
import newel.catalogue.Kit;
import newel.catalogue.Support;
import newel.catalogue.Variant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FittingTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 3);

    @Test
    void the_reason_says_how_far_the_limit_and_whose_words_it_rests_on() {
        Limits limits = Limits.of(List.of(preset("shoulder-pain", Sided.RIGHT)));

        Fit.FitsTrimmed trimmed =
                assertInstanceOf(Fit.FitsTrimmed.class, FITTING.fit(variant("t-raise-seated-edge"), limits));

        assertTrue(
                texts(trimmed.reasons())
                        .get(0)
                        .matches(
                                "Raises the right arm to \\d+°; the limit is 80° \\(shoulder pain, logged 3 March 2026, from the client\\)\\."),
                texts(trimmed.reasons()).toString());
    }

    @Test
    void all_reasons_are_given_and_not_only_the_first() {
        Limits limits = Limits.of(
                List.of(preset("cannot-stand", Sided.BOTH)),
                List.of(new Limit.KitAtHome(EnumSet.of(Kit.CHAIR)), new Limit.EffortAtMost(2)));

        Fit.DoesNotFit not = assertInstanceOf(Fit.DoesNotFit.class, FITTING.fit(variant("towel-row-standing"), limits));

        assertEquals(
                List.of(
                        "Is done standing (cannot stand, logged 3 March 2026, from the client).",
                        "Needs towel, which the home does not have (at home).",
                        "Takes effort 4 of 10; the limit is 2 (at home)."),
                texts(not.reasons()));
    }

    @Test
    void free_arms_are_trimmed_apart_and_a_towel_couples_them() {
        Limits right = Limits.of(List.of(), List.of(new Limit.Angle(Motion.SHOULDER_RAISE, Sided.RIGHT, 55)));

        Share free = ((Fit.FitsTrimmed) FITTING.fit(variant("t-raise-seated-edge"), right)).share();
        Share towel = ((Fit.FitsTrimmed) FITTING.fit(
                        variant("towel-row-seated-edge"),
                        Limits.of(List.of(), List.of(new Limit.Angle(Motion.SHOULDER_EXTENSION, Sided.RIGHT, 22)))))
                .share();

        assertEquals(1, free.left());
        assertTrue(free.right() < 1);
        assertEquals(towel.left(), towel.right());
        assertTrue(towel.right() < 1);
    }

    @Test
    void a_movement_done_on_each_side_is_judged_on_both_though_it_is_written_for_the_right() {
        Variant each = variant("knee-straightening");
        for (Sided side : List.of(Sided.LEFT, Sided.RIGHT)) {
            Limits limits = Limits.of(List.of(), List.of(new Limit.Load(newel.body.Joint.KNEE, side, 0.0001)));
            assertFalse(FITTING.broken(each, Share.WHOLE, limits).isEmpty(), "side " + side);
        }
    }

    @Test
    void the_ceiling_is_compared_with_this_clients_fingertips() {
        Variant press = variant("press-standing");
        Limit low = new Limit.Ceiling(185.0 / 160, 190, 160);
        Limit high = new Limit.Ceiling(240.0 / 160, 245, 160);

        assertTrue(texts(FITTING.broken(press, Share.WHOLE, Limits.of(List.of(), List.of(low))))
                .get(0)
                .matches("Reaches \\d+ cm high; the ceiling is at 190 cm \\(at home\\)\\."));
        assertEquals(List.of(), FITTING.broken(press, Share.WHOLE, Limits.of(List.of(), List.of(high))));
    }

    @Test
    void stepping_needs_two_metres_of_clear_floor() {
        Variant step = variant("steptouch-free");

        assertEquals(
                List.of("Needs 2 metres of clear floor; there are 1.5 (at home)."),
                texts(FITTING.broken(step, Share.WHOLE, Limits.of(List.of(), List.of(new Limit.ClearSpace(1.5))))));
        assertEquals(
                List.of(), FITTING.broken(step, Share.WHOLE, Limits.of(List.of(), List.of(new Limit.ClearSpace(2)))));
    }

    @ParameterizedTest
    @CsvSource({"TWO_HANDS, true", "ONE_HAND, false", "NONE, false"})
    void less_support_than_needed_does_not_fit(Support least, boolean broken) {
        Limits limits = Limits.of(List.of(), List.of(new Limit.SupportNeeded(least)));

        assertEquals(
                broken,
                !FITTING.broken(variant("heel-raise-one-hand"), Share.WHOLE, limits)
                        .isEmpty());
        assertEquals(List.of(), FITTING.broken(variant("heel-raise-seated"), Share.WHOLE, limits));
    }

    @Test
    void of_two_limits_the_tighter_holds_and_of_two_equal_ones_the_clinicians() {
        Limitation client = own(Limitation.Source.CLIENT, 80);
        Limitation clinician = own(Limitation.Source.CLINICIAN, 80);
        Limitation looser = own(Limitation.Source.CLINICIAN, 100);

        Limits limits = Limits.of(List.of(client, looser, clinician));

        assertEquals(
                List.of("Raise, logged 3 March 2026, ordered by a clinician"),
                limits.bounds().stream().map(Bound::whose).toList());
        assertEquals(List.of(new Limit.Angle(Motion.SHOULDER_RAISE, Sided.RIGHT, 80)), limits.limits());
    }

    @Test
    void only_loosening_a_clinicians_order_asks_for_a_reason() {
        List<Limit> tighter = List.of(new Limit.Angle(Motion.SHOULDER_RAISE, Sided.RIGHT, 70));
        List<Limit> looser = List.of(new Limit.Angle(Motion.SHOULDER_RAISE, Sided.RIGHT, 95));

        assertTrue(Loosening.asksForReason(own(Limitation.Source.CLINICIAN, 80), looser));
        assertFalse(Loosening.asksForReason(own(Limitation.Source.CLINICIAN, 80), tighter));
        assertFalse(Loosening.asksForReason(own(Limitation.Source.CLIENT, 80), looser));
        assertTrue(Loosening.asksForReason(own(Limitation.Source.CLINICIAN, 80), List.of()));
    }

    private static Limitation own(Limitation.Source source, double degrees) {
        Limit limit = new Limit.Angle(Motion.SHOULDER_RAISE, Sided.RIGHT, degrees);
        return new Limitation(
                source + "-" + degrees, "", "Raise", Sided.RIGHT, source, DAY, null, List.of(limit), List.of());
    }

    private static Limitation preset(String id, Sided side) {
        return Shipped.PRESETS.find(id).orElseThrow().limitation(id, "", side, Limitation.Source.CLIENT, DAY, null);
    }

    private static List<String> texts(List<Reason> reasons) {
        return Stream.of(reasons).flatMap(List::stream).map(Reason::text).toList();
    }
}
