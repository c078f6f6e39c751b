package newel.limit;

import static newel.Shipped.ADAPTING;
import static newel.Shipped.FITTING;
import static newel.Shipped.PRESETS;
import static newel.Shipped.variant;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import newel.adapt.Adaptation;
import newel.body.Arm;
import newel.body.Contacts;
import newel.body.Foot;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Leg;
import newel.body.Pelvis;
import newel.body.Pose;
import newel.body.Spine;
import newel.catalogue.Dose;
import newel.catalogue.DoseRange;
import newel.catalogue.Grip;
import newel.catalogue.Position;
import newel.catalogue.Purposes;
import newel.catalogue.Sides;
import newel.catalogue.Support;
import newel.catalogue.Tempo;
import newel.catalogue.Trait;
import newel.catalogue.Trim;
import newel.catalogue.Variant;
import newel.catalogue.View;
import newel.catalogue.Words;
import org.junit.jupiter.api.Test;

/** The worked cases of the screening reference, section 13.18; what the catalogue lacks is posed here. */
class DemandFilterTest {
    private static final Leg STRAIGHT = new Leg(0, 0, 0, 4, 4, 0, 0);

    @Test
    void osteoporosis_blocks_a_standing_toe_touch_for_its_rounded_back() {
        // 13.18 row 1: osteoporosis, standing toe touch: BLOCK SPINE_FLEX_END (Giangregorio 2014)
        Spine rounded = new Spine(40, 0, 0);
        Pose touch = new Pose(
                new Pelvis(50, 0, 0),
                rounded,
                rounded,
                Spine.STRAIGHT,
                0,
                Arm.HANGING,
                Arm.HANGING,
                bent(55),
                bent(55));

        List<String> reasons = reasons("osteoporosis", standing("toe-touch", Set.of(), touch));

        assertEquals(List.of("Rounds the back far (osteoporosis, logged 3 March 2026, from the client)."), reasons);
    }

    @Test
    void a_vertebral_fracture_allows_a_brisk_walk() {
        // 13.18 row 3: vertebral fracture, brisk walk: ALLOW
        Pose stride = Pose.NEUTRAL
                .withLeg(newel.body.Side.RIGHT, new Leg(20, 0, 0, 8, 2, 0, 0))
                .withLeg(newel.body.Side.LEFT, new Leg(-6, 0, 0, 6, 8, 0, 0));

        assertEquals(List.of(), reasons("vertebral-fracture", standing("brisk-walk", Set.of(), stride)));
    }

    @Test
    void an_anterior_hip_blocks_a_long_backward_lunge_with_the_toes_out() {
        // 13.18 row 5: anterior hip replacement, long backward lunge, toes out: BLOCK HIP_EXT_ER
        Pose lunge = Pose.NEUTRAL
                .withLeg(newel.body.Side.LEFT, new Leg(-20, 0, 30, 10, 0, 0, 0))
                .withLeg(newel.body.Side.RIGHT, new Leg(40, 0, 0, 45, 5, 0, 0));
        Contacts free = contacts(Foot.OFF, new Foot(Foot.Placement.FLAT, 0, .05, 0, 0, 0));

        List<String> reasons = reasons("hip-replacement-anterior", posed("lunge", Set.of(), lunge, free));

        assertTrue(reasons.get(0).startsWith("Takes the left hip back to 20°; the limit is 5°"), reasons.toString());
        assertTrue(reasons.get(1).startsWith("Turns the left hip out to 30°; the limit is 20°"), reasons.toString());
    }

    @Test
    void carpal_tunnel_swaps_a_push_up_on_a_bent_wrist_for_one_with_a_straight_wrist() {
        // 13.18 row 7: carpal tunnel, floor push-up: SWAP to counter or wall with a neutral wrist
        Limits limits = limits("wrist-pain");
        Variant push = variant("push-counter");
        assertTrue(FITTING.broken(push, Share.WHOLE, limits).stream()
                .anyMatch(r -> r.text().contains("weight through the hand")));

        Variant instead = switch (ADAPTING.adapt(push, limits)) {
            case Adaptation.Regressed r -> r.variant();
            case Adaptation.Substituted s -> s.variant();
            case Adaptation.Keeps k -> k.variant();
            case Adaptation.Trimmed t -> t.variant();
            case Adaptation.LeftOut l -> throw new AssertionError(l.reasons());
        };
        assertTrue(FITTING.broken(instead, Share.WHOLE, limits).isEmpty(), instead.id());
        assertTrue(instead.purposes().nearness(push.purposes()) > 0.8, instead.id());
    }

    @Test
    void stenosis_limits_an_arched_back_and_leaves_a_seated_rounding() {
        // 13.18 row 9: lumbar stenosis, prone press-up: LIMIT SPINE_EXT_SUSTAINED, offer seated flexion
        Spine arched = new Spine(-8, 0, 0);
        Pose arch =
                new Pose(Pelvis.LEVEL, arched, arched, Spine.STRAIGHT, 0, Arm.HANGING, Arm.HANGING, STRAIGHT, STRAIGHT);

        List<String> reasons = reasons("spinal-stenosis", standing("arch", Set.of(), arch));

        assertTrue(reasons.get(0).startsWith("Arches the low back to 8°; the limit is 3°"), reasons.toString());
        Spine round = new Spine(20, 0, 0);
        Pose seated = new Pose(
                new Pelvis(0, 0, 0), round, round, Spine.STRAIGHT, 0, Arm.HANGING, Arm.HANGING, bent(90), bent(90));
        Contacts seat = new Contacts(Ground.SEAT_EDGE, .27, Foot.OFF, Foot.OFF, Hand.FREE, Hand.FREE, 0, 0);
        assertEquals(List.of(), reasons("spinal-stenosis", posed("seated-rounding", Set.of(), seated, seat)));
    }

    private static Leg bent(double flex) {
        return new Leg(flex, 0, 0, flex > 80 ? 90 : 4, 4, 0, 0);
    }

    private static List<String> reasons(String preset, Variant variant) {
        return FITTING.broken(variant, Share.WHOLE, limits(preset)).stream()
                .map(Reason::text)
                .toList();
    }

    private static Limits limits(String preset) {
        return Limits.of(List.of(PRESETS.find(preset)
                .orElseThrow()
                .limitation(preset, "", Sided.BOTH, Limitation.Source.CLIENT, LocalDate.of(2026, 3, 3), null)));
    }

    private static Variant standing(String id, Set<Trait> traits, Pose pose) {
        return posed(id, traits, pose, contacts(foot(-.05), foot(.05)));
    }

    private static Contacts contacts(Foot left, Foot right) {
        return new Contacts(Ground.FEET, 0, right, left, Hand.FREE, Hand.FREE, 0, 0);
    }

    private static Foot foot(double z) {
        return new Foot(Foot.Placement.FLAT, 0, z, 0, 0, 0);
    }

    private static Variant posed(String id, Set<Trait> traits, Pose pose, Contacts contacts) {
        boolean seated = contacts.ground() != Ground.FEET;
        Dose dose = new Dose(1, 5, 0);
        return new Variant(
                id,
                id,
                id,
                new Purposes(java.util.Map.of(), Set.of()),
                seated ? Position.SEATED_EDGE : Position.STANDING,
                Support.NONE,
                EnumSet.noneOf(newel.catalogue.Kit.class),
                new View(0, 0),
                List.of(new KeyPose(id, pose, contacts)),
                false,
                Sides.TOGETHER,
                new Tempo(2, 0, 2),
                Trim.NONE,
                new DoseRange(dose, dose),
                1,
                0,
                Grip.NONE,
                3,
                traits,
                new Words(List.of(), List.of(), "", "", ""),
                newel.catalogue.Breath.EVEN,
                List.of());
    }
}
