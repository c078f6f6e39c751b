package newel.adapt;

import static newel.Shipped.ADAPTING;
import static newel.Shipped.CATALOGUE;
import static newel.Shipped.DEMANDS;
import static newel.Shipped.FITTING;
import static newel.Shipped.PRESETS;
import static newel.Shipped.variant;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import newel.body.Joint;
import newel.body.Motion;
import newel.catalogue.Catalogue;
import newel.catalogue.Kit;
import newel.catalogue.Movement;
import newel.catalogue.Support;
import newel.catalogue.Variant;
import newel.limit.Avoidance;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Limits;
import newel.limit.Preset;
import newel.limit.Share;
import newel.limit.Sided;
import org.junit.jupiter.api.Test;

/** What must hold of adapting, on the shipped catalogue under seeded random limits. The seed stands in each message. */
class AdaptingTest {
    private static final long SEED = 20260303;
    private static final int RUNS = 150;

    /** Where somebody ends up; empty when nothing fits. */
    private record End(Variant variant, Share share) {}

    @Test
    void the_result_always_fits() {
        each((message, wanted, limits) -> end(wanted, limits)
                .ifPresent(
                        end -> assertEquals(List.of(), FITTING.broken(end.variant(), end.share(), limits), message)));
    }

    @Test
    void no_other_state_that_fits_loses_less() {
        each((message, wanted, limits) ->
                assertEquals(bruteForce(wanted, limits), loss(wanted, end(wanted, limits)), 1e-9, message));
    }

    @Test
    void adapting_twice_changes_nothing() {
        each((message, wanted, limits) -> {
            Optional<End> once = end(wanted, limits);
            once.ifPresent(end -> assertEquals(
                    loss(end.variant(), Optional.of(end)),
                    loss(end.variant(), end(end.variant(), limits)),
                    1e-9,
                    message + ": another state is nearer the second time"));
            once.ifPresent(end -> assertEquals(end, end(end.variant(), limits).orElseThrow(), message));
        });
    }

    @Test
    void the_same_question_gets_the_same_answer_from_anybody() {
        Adapting another = new Adapting(CATALOGUE, DEMANDS);
        each((message, wanted, limits) ->
                assertEquals(ADAPTING.adapt(wanted, limits), another.adapt(wanted, limits), message));
    }

    @Test
    void a_tighter_limit_never_keeps_more_of_the_training() {
        Random random = new Random(SEED);
        each((message, wanted, limits) -> {
            double before = loss(wanted, end(wanted, limits));
            double after = loss(wanted, end(wanted, plus(limits, anyLimit(random))));

            assertTrue(after >= before - 1e-9, () -> message + ": lost " + before + ", then " + after);
        });
    }

    @Test
    void a_limit_made_tighter_never_keeps_more_of_the_training() {
        Random random = new Random(SEED);
        each((message, wanted, limits) -> {
            Limit.Angle loose = new Limit.Angle(
                    Motion.values()[random.nextInt(Motion.values().length)], Sided.BOTH, 5 + random.nextInt(130));
            Limit.Angle tight = new Limit.Angle(loose.motion(), Sided.BOTH, loose.maxDegrees() * random.nextDouble());
            double before = loss(wanted, end(wanted, plus(limits, loose)));
            double after = loss(wanted, end(wanted, plus(limits, tight)));

            assertTrue(
                    after >= before - 1e-9,
                    () -> "%s, %s then %s: lost %s, then %s".formatted(message, loose, tight, before, after));
        });
    }

    /** Other neighbours, other substitutes: a handful of movements make a catalogue of their own. */
    @Test
    void in_small_catalogues_too_no_other_state_loses_less_and_twice_is_once() {
        Random random = new Random(SEED);
        for (int run = 0; run < RUNS; run++) {
            List<Movement> movements = new ArrayList<>(CATALOGUE.movements());
            Collections.shuffle(movements, random);
            Catalogue small = new Catalogue(movements.subList(0, 2 + random.nextInt(4)));
            Adapting adapting = new Adapting(small, DEMANDS);
            Variant wanted =
                    small.variants().get(random.nextInt(small.variants().size()));
            Limits limits = anyLimits(random);
            String message = "seed %d, run %d: %s among %s under %s"
                    .formatted(
                            SEED,
                            run,
                            wanted.id(),
                            small.movements().stream().map(Movement::id).toList(),
                            limits.limits());

            Optional<End> end = end(adapting, wanted, limits);

            assertEquals(bruteForce(small, adapting, wanted, limits), loss(adapting, wanted, end), 1e-9, message);
            end.ifPresent(e -> assertEquals(end, end(adapting, e.variant(), limits), message));
        }
    }

    @Test
    void nothing_harder_than_what_was_wanted_is_ever_given() {
        each((message, wanted, limits) -> end(wanted, limits)
                .ifPresent(
                        end -> assertTrue(ADAPTING.challenge(end.variant()) <= ADAPTING.challenge(wanted), message)));
    }

    @Test
    void without_limits_everything_is_kept() {
        for (Variant wanted : CATALOGUE.variants()) {
            assertEquals(new Adaptation.Keeps(wanted), ADAPTING.adapt(wanted, Limits.NONE));
        }
    }

    @Test
    void a_client_who_cannot_stand_gets_the_seated_row() {
        Adaptation adaptation = ADAPTING.adapt(variant("towel-row-standing"), of("cannot-stand", Sided.BOTH));

        Adaptation.Regressed regressed = assertInstanceOf(Adaptation.Regressed.class, adaptation);
        assertEquals("towel-row-seated-edge", regressed.variant().id());
        assertEquals(List.of("towel-row-standing", "towel-row-seated-edge"), regressed.path());
        assertEquals(
                List.of("Is done standing (cannot stand, logged 3 March 2026, from the client)."),
                regressed.reasons().stream().map(reason -> reason.text()).toList());
    }

    @Test
    void a_painful_right_shoulder_trims_the_right_arm_alone() {
        Limits limits = Limits.of(List.of(), List.of(new Limit.Angle(Motion.SHOULDER_RAISE, Sided.RIGHT, 100)));
        Variant wanted = variant("y-raise-seated-edge");

        Adaptation.Trimmed trimmed = assertInstanceOf(Adaptation.Trimmed.class, ADAPTING.adapt(wanted, limits));

        assertEquals(1.0, trimmed.share().left());
        assertTrue(trimmed.share().right() < 1, "right " + trimmed.share().right());
    }

    private interface Case {
        void check(String message, Variant wanted, Limits limits);
    }

    private static void each(Case test) {
        Random random = new Random(SEED);
        List<Variant> variants = CATALOGUE.variants();
        for (int run = 0; run < RUNS; run++) {
            Variant wanted = variants.get(random.nextInt(variants.size()));
            Limits limits = anyLimits(random);
            test.check(
                    "seed %d, run %d: %s under %s".formatted(SEED, run, wanted.id(), limits.limits()), wanted, limits);
        }
    }

    private static Limits anyLimits(Random random) {
        List<Limitation> limitations = new ArrayList<>();
        List<Preset> presets = PRESETS.all();
        for (int i = random.nextInt(3); i > 0; i--) {
            Preset preset = presets.get(random.nextInt(presets.size()));
            limitations.add(limitation(preset, Sided.values()[random.nextInt(3)]));
        }
        List<Limit> more = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            more.add(anyLimit(random));
        }
        return Limits.of(limitations, more);
    }

    private static Limit anyLimit(Random random) {
        Sided side = Sided.values()[random.nextInt(3)];
        return switch (random.nextInt(8)) {
            case 0 ->
                new Limit.Angle(Motion.values()[random.nextInt(Motion.values().length)], side, 5 + random.nextInt(130));
            case 1 ->
                new Limit.Load(
                        Joint.values()[random.nextInt(Joint.values().length)],
                        side,
                        0.002 + random.nextDouble() * 0.06);
            case 2 -> new Limit.SupportNeeded(Support.values()[random.nextInt(Support.values().length)]);
            case 3 -> new Limit.EffortAtMost(3 + random.nextInt(6));
            case 4 ->
                new Limit.KitAtHome(EnumSet.of(Kit.CHAIR, Kit.values()[random.nextInt(Kit.values().length)], Kit.WALL));
            case 5 -> new Limit.ClearSpace(random.nextInt(4));
            case 6 -> {
                int ceilingCm = 150 + random.nextInt(110);
                yield new Limit.Ceiling(ceilingCm / 160.0, ceilingCm, 160);
            }
            default -> new Limit.Avoid(Avoidance.values()[random.nextInt(Avoidance.values().length)]);
        };
    }

    private static Limitation limitation(Preset preset, Sided side) {
        LocalDate day = LocalDate.of(2026, 3, 3);
        return preset.limitation(preset.id(), "", side, Limitation.Source.CLIENT, day, null);
    }

    private static Limits of(String preset, Sided side) {
        return Limits.of(List.of(limitation(PRESETS.find(preset).orElseThrow(), side)));
    }

    private static Limits plus(Limits limits, Limit more) {
        List<Limit> all = new ArrayList<>(limits.limits());
        all.add(more);
        return Limits.of(List.of(), all);
    }

    private static Optional<End> end(Variant wanted, Limits limits) {
        return end(ADAPTING, wanted, limits);
    }

    private static Optional<End> end(Adapting adapting, Variant wanted, Limits limits) {
        return switch (adapting.adapt(wanted, limits)) {
            case Adaptation.Keeps k -> Optional.of(new End(k.variant(), Share.WHOLE));
            case Adaptation.Trimmed t -> Optional.of(new End(t.variant(), t.share()));
            case Adaptation.Regressed r -> Optional.of(new End(r.variant(), r.share()));
            case Adaptation.Substituted s -> Optional.of(new End(s.variant(), s.share()));
            case Adaptation.LeftOut l -> Optional.empty();
        };
    }

    private static double loss(Variant wanted, Optional<End> end) {
        return loss(ADAPTING, wanted, end);
    }

    private static double loss(Adapting adapting, Variant wanted, Optional<End> end) {
        return end.map(e -> adapting.loss(wanted, e.variant(), e.share())).orElse(Double.POSITIVE_INFINITY);
    }

    private static double bruteForce(Variant wanted, Limits limits) {
        return bruteForce(CATALOGUE, ADAPTING, wanted, limits);
    }

    /** Every state of every variant, one after the other, without order or bound. */
    private static double bruteForce(Catalogue catalogue, Adapting adapting, Variant wanted, Limits limits) {
        double least = Double.POSITIVE_INFINITY;
        for (Variant variant : catalogue.variants()) {
            if (adapting.mayStandIn(wanted, variant)) {
                for (Share share : FITTING.shares(variant)) {
                    if (FITTING.broken(variant, share, limits).isEmpty()) {
                        least = Math.min(least, adapting.loss(wanted, variant, share));
                    }
                }
            }
        }
        return least;
    }
}
