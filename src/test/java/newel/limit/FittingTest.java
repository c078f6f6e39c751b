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
import newel.body.Demands;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Side;
import newel.catalogue.Kit;
import newel.catalogue.Sides;
import newel.catalogue.Support;
import newel.catalogue.Trait;
import newel.catalogue.Variant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
                        "Needs a towel; there is none at home.",
                        "Takes effort 4 of 10; the limit is 2 at home."),
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
            Limits limits = Limits.of(List.of(), List.of(new Limit.Load(Joint.KNEE, side, 0.0001)));
            assertFalse(FITTING.broken(each, Share.WHOLE, limits).isEmpty(), "side " + side);
        }
    }

    @Test
    void where_sides_take_turns_the_left_asks_for_what_the_right_asks_for() {
        List<Variant> turns = Shipped.CATALOGUE.variants().stream()
                .filter(variant -> variant.sides() != Sides.TOGETHER)
                .toList();
        assertFalse(turns.isEmpty());
        for (Variant variant : turns) {
            Demands demands = Shipped.DEMANDS.at(variant, Share.WHOLE);
            for (Motion motion : Motion.values()) {
                assertEquals(
                        demands.angle(motion, Side.RIGHT),
                        demands.angle(motion, Side.LEFT),
                        1e-9,
                        variant.id() + " " + motion);
            }
            for (Joint joint : Joint.values()) {
                assertEquals(
                        demands.load(joint, Side.RIGHT),
                        demands.load(joint, Side.LEFT),
                        1e-9,
                        variant.id() + " " + joint);
            }
        }
    }

    @Test
    void a_stiff_left_hip_counts_in_a_leg_raise_written_for_the_right() {
        Limits limits = Limits.of(List.of(), List.of(new Limit.Angle(Motion.HIP_ABDUCTION, Sided.LEFT, 5)));

        List<String> reasons = texts(FITTING.broken(variant("side-leg-raise"), Share.WHOLE, limits));

        assertEquals(1, reasons.size());
        assertTrue(reasons.getFirst().contains("left hip"), reasons.toString());
    }

    @Test
    void the_ceiling_is_compared_with_this_clients_fingertips() {
        Variant press = variant("press-standing");
        Limit low = new Limit.Ceiling(185.0 / 160, 190, 160);
        Limit high = new Limit.Ceiling(240.0 / 160, 245, 160);

        assertTrue(texts(FITTING.broken(press, Share.WHOLE, Limits.of(List.of(), List.of(low))))
                .get(0)
                .matches("Reaches \\d+ cm high; the ceiling is at 190 cm at home\\."));
        assertEquals(List.of(), FITTING.broken(press, Share.WHOLE, Limits.of(List.of(), List.of(high))));
    }

    @Test
    void the_reason_word_for_word() {
        Limits limits = Limits.of(List.of(preset("shoulder-pain", Sided.RIGHT)));
        Variant press = variant("press-standing");
        long raised = Math.round(Shipped.DEMANDS.at(press, Share.WHOLE).angle(Motion.SHOULDER_RAISE, Side.RIGHT));

        assertTrue(raised > 80, "raised " + raised);
        assertEquals(
                "Raises the right arm to " + raised
                        + "°; the limit is 80° (shoulder pain, logged 3 March 2026, from the client).",
                texts(FITTING.broken(press, Share.WHOLE, limits)).getFirst());
    }

    /** The shipped catalogue has nothing on the floor, so a variant that goes down there is made from one that does not. */
    @Test
    void who_cannot_get_down_to_the_floor_is_given_nothing_there() {
        Limits limits = Limits.of(List.of(preset("cannot-get-to-floor", Sided.BOTH)));
        Variant standing = variant("heel-raise-one-hand");

        assertEquals(List.of(), FITTING.broken(standing, Share.WHOLE, limits));
        assertEquals(
                List.of("Goes down to the floor (cannot get down to the floor, logged 3 March 2026, from the client)."),
                texts(new Fitting(VariantDemands.ofBody()).broken(onTheFloor(standing), Share.WHOLE, limits)));
    }

    private static Variant onTheFloor(Variant v) {
        return new Variant(
                v.id(),
                v.movement(),
                v.name(),
                v.purposes(),
                v.position(),
                v.support(),
                v.kit(),
                v.view(),
                v.keyPoses(),
                v.round(),
                v.sides(),
                v.tempo(),
                v.trim(),
                v.dose(),
                v.coordination(),
                v.holdSeconds(),
                v.grip(),
                v.effort(),
                EnumSet.of(Trait.FLOOR_TRANSFER),
                v.words(),
                v.breath(),
                v.easier());
    }

    @ParameterizedTest
    @ValueSource(strings = {"knee-lift-seated-press", "knee-lift-hand-press", "straighten-press-down"})
    void a_wrist_that_may_carry_nothing_presses_on_no_knee_either(String id) {
        Limits wrist = Limits.of(List.of(), List.of(new Limit.NoWristWeight(Sided.RIGHT)));

        assertEquals(
                List.of("Puts weight through the hand and wrist at home."),
                texts(FITTING.broken(variant(id), Share.WHOLE, wrist)));
    }

    @Test
    void stepping_needs_two_metres_of_clear_floor() {
        Variant step = variant("steptouch-free");

        assertEquals(
                List.of("Needs 2 metres of clear floor; there are 1.5 at home."),
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
                List.of("(Raise, logged 3 March 2026, ordered by a clinician)"),
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
