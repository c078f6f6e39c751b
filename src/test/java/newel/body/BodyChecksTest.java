package newel.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The body against published tables and worked examples; the source stands beside each figure. */
class BodyChecksTest {
    private static final Vec KNEE = Vec.ZERO;

    @Test
    void segment_masses_add_up_to_one_body() {
        // Winter 2009 table 4.1; de Leva 1996 table 4 (women's published sum is 0.9999)
        assertEquals(1.000, Masses.WINTER.total(), .0005);
        assertEquals(1.0000, Masses.DE_LEVA_MEN.total(), .0005);
        assertEquals(0.9999, Masses.DE_LEVA_WOMEN.total(), .0005);
    }

    @Test
    void a_limb_in_the_plane_has_its_textbook_centres_of_mass() {
        // Textbook limb with Winter's data (BMClab notebook): points in metres
        Vec ball = new Vec(1.011, .013, 0);
        Vec ankle = new Vec(.849, .110, 0);
        Vec knee = new Vec(.864, .549, 0);
        Vec hip = new Vec(.721, .928, 0);
        Masses winter = Masses.WINTER;

        Bodies.Point foot = new Bodies.Point(
                winter.foot().mass(), ankle.towards(ball, winter.foot().centre()));
        Bodies.Point shank = new Bodies.Point(
                winter.shank().mass(), knee.towards(ankle, winter.shank().centre()));
        Bodies.Point thigh = new Bodies.Point(
                winter.thigh().mass(), hip.towards(knee, winter.thigh().centre()));

        assertPoint(.783, .764, thigh.at(), .0015);
        assertPoint(.858, .359, shank.at(), .0015);
        assertPoint(.930, .062, foot.at(), .0015);
        assertPoint(.818, .584, Bodies.centre(List.of(foot, shank, thigh)), .0015);
    }

    @Test
    void the_limb_has_its_textbook_moment_of_inertia() {
        // Same notebook, M = 100 kg: 1.257 about its own centre and 3.317 kg·m² about the hip; k of Winter table 4.1
        Vec ball = new Vec(1.011, .013, 0);
        Vec ankle = new Vec(.849, .110, 0);
        Vec knee = new Vec(.864, .549, 0);
        Vec hip = new Vec(.721, .928, 0);
        List<Bodies.Point> points = List.of(
                new Bodies.Point(1.45, ankle.towards(ball, .5)),
                new Bodies.Point(4.65, knee.towards(ankle, .433)),
                new Bodies.Point(10, hip.towards(knee, .433)));
        double[] gyration = {.475 * ankle.distance(ball), .302 * knee.distance(ankle), .323 * hip.distance(knee)};

        assertEquals(3.317, inertia(points, gyration, hip), .01);
        assertEquals(1.257, inertia(points, gyration, Bodies.centre(points)), .01);
    }

    private static double inertia(List<Bodies.Point> points, double[] gyration, Vec about) {
        double sum = 0;
        for (int i = 0; i < gyration.length; i++) {
            double arm = points.get(i).at().distance(about);
            sum += points.get(i).mass() * (gyration[i] * gyration[i] + arm * arm);
        }
        return sum;
    }

    @Test
    void standing_upright_the_centre_of_mass_lies_at_583_thousandths_of_stature() {
        // Winter masses on Drillis and Contini heights, computed in the reference: .583
        Posed standing = Solver.pose(Poses.standing());

        assertEquals(.583, Statics.centreOfMass(standing, Masses.WINTER).y(), .003);
        for (Masses masses : List.of(Masses.DE_LEVA_MEN, Masses.DE_LEVA_WOMEN, Masses.PAVOL_MEN, Masses.PAVOL_WOMEN)) {
            double height = Statics.centreOfMass(standing, masses).y();
            assertTrue(height > .54 && height < .595, () -> "height " + height);
        }
    }

    @ParameterizedTest
    @CsvSource({"0", "30", "60", "90", "130"})
    void a_straight_arm_held_level_loads_the_shoulder_by_its_whole_lever(double plane) {
        // Winter and Drillis, three segments: .00857; whole-arm row: .00880 (reference 4.3)
        double moment = shoulder(plane, 90, 0);

        assertEquals(.00857, moment, .02 * .00857);
    }

    @ParameterizedTest
    @CsvSource({"45, .70710678", "135, .70710678", "180, 0", "0, 0"})
    void a_straight_arm_loads_the_shoulder_by_the_sine_of_its_raise(double raise, double share) {
        assertEquals(share, shoulder(60, raise, 0) / shoulder(60, 90, 0), 1e-6);
    }

    @Test
    void bending_the_elbow_shortens_the_lever() {
        // Upper arm level, elbow 90, forearm upright: .00636 (reference 4.3, Winter and Drillis)
        assertEquals(.00636, shoulder(90, 90, 90), .02 * .00636);
    }

    @Test
    void half_a_kilogram_in_the_hand_adds_its_own_lever() {
        // Reference 4.3: +0.5·9.81·.387 H; ours holds it in the palm, .382 H from the shoulder
        Pose level = Poses.arms(90, 90, 0);
        double bare = size(Solver.pose(level, Poses.STANDING), Joint.SHOULDER);
        Contacts c = Poses.STANDING;
        Hand bottle = Hand.of(Hand.Hold.BOTTLE, Vec.ZERO, 0);
        Contacts holding = new Contacts(c.ground(), 0, c.rightFoot(), c.leftFoot(), bottle, bottle, 0, .5 / 70);

        double held = size(Solver.pose(level, holding), Joint.SHOULDER);

        assertEquals(.5 / 70 * .382, held - bare, 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"30, .0611", "45, .0864", "60, .1059", "90, .1222"})
    void a_leaning_trunk_loads_both_hips_as_the_head_arms_and_trunk_row_says(double lean, double expected) {
        // Winter HAT row .678·.626·.288 sin θ, arms along the trunk (reference 4.4); the row as one lump to 1 %,
        // our own segments within 3 % of it
        Posed leaning = Solver.pose(Poses.leaning(lean, lean), Poses.STANDING);
        Vec hips = leaning.trunk().pelvis();
        Vec lump = hips.towards(leaning.trunk().midShoulders(), .626);

        double row =
                Moments.ofWeights(hips, List.of(new Bodies.Point(.678, lump))).length();
        double segments = Moments.ofWeights(hips, hat(leaning)).length();

        assertEquals(expected, row, .01 * expected);
        assertEquals(expected, segments, .03 * expected);
    }

    @Test
    void the_low_back_carries_less_than_the_hips_when_bent_level() {
        // L5/S1, trunk 90, arms hanging: .078 (Winter) to .089 (Rajagopal model); hips .139 (reference 4.4)
        Posed bent = Solver.pose(Poses.leaning(90, 0), Poses.STANDING);

        double lowBack = size(bent, Joint.LOW_BACK);
        double hips = Moments.ofWeights(bent.trunk().pelvis(), hat(bent)).length();

        assertEquals(.0784, lowBack, .15 * .0784);
        assertEquals(.1387, hips, .03 * .1387);
        assertTrue(lowBack < hips);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, .0969", "15, .0158, .0811", "30, .0306, .0664", "45, .0432, .0537"})
    void just_off_the_seat_hip_and_knee_share_one_sum_whatever_the_lean(double lean, double hip, double knee) {
        // Exact static identity, Winter masses on Drillis lengths, thigh level: .0969 a leg (reference 4.6)
        double sum = .5 * .678 * Build.THIGH + .1 * Build.THIGH * (1 - .433);
        Posed off = Solver.pose(Poses.offTheSeat(lean), Poses.STANDING);

        double hips = Moments.ofWeights(off.trunk().pelvis(), hat(off)).length() / 2;
        Vec atKnee = Statics.moment(off, Masses.WINTER, Joint.KNEE, Side.RIGHT);
        Vec atHip = Statics.moment(off, Masses.WINTER, Joint.HIP, Side.RIGHT);

        assertEquals(.0969, sum, .0001);
        assertEquals(sum, Math.abs(atHip.z()) + Math.abs(atKnee.z()), 1e-6);
        assertEquals(hip, hips, .03 * .0969);
        assertEquals(knee, Math.abs(atKnee.z()), .03 * .0969);
    }

    @Test
    void the_seat_off_sum_agrees_with_computed_rises() {
        // Yoshioka 2007: 1.53 N·m/kg over five million computed rises; ours in N·m/kg is .0969·9.81·H
        assertEquals(1.53, .0969 * 9.81 * 1.60, .1 * 1.53);
        assertEquals(1.53, .0969 * 9.81 * 1.70, .1 * 1.53);
    }

    @Test
    void forearm_and_back_agree_with_the_college_physics_problems() {
        // OpenStax College Physics 2e, muscles and joints, g = 9.80: forearm 2.50 kg at .160 m and book 4.00 kg at .380
        // m
        double forearm = 9.80
                * Moments.ofWeights(
                                KNEE,
                                List.of(
                                        new Bodies.Point(2.5, new Vec(.16, 0, 0)),
                                        new Bodies.Point(4, new Vec(.38, 0, 0))))
                        .length();
        assertEquals(18.8, forearm, .005 * 18.8);
        assertEquals(470, forearm / .04, .005 * 470);
        assertEquals(407, forearm / .04 - 9.80 * 6.5, .005 * 407);

        // Same, lifting with the back: 55.0 kg at .350 m, 30.0 kg at .500 m, muscle arm .0800 m at 29.0 degrees
        double back = 9.80
                * Moments.ofWeights(
                                KNEE,
                                List.of(
                                        new Bodies.Point(55, new Vec(.35, 0, 0)),
                                        new Bodies.Point(30, new Vec(.5, 0, 0))))
                        .length();
        double muscle = back / .08;
        double along = muscle * Math.cos(Math.toRadians(29));
        double up = 9.80 * 85 + muscle * Math.sin(Math.toRadians(29));
        assertEquals(335.7, back, .005 * 335.7);
        assertEquals(4.20e3, muscle, .005 * 4.20e3);
        assertEquals(4.66e3, Math.hypot(along, up), .005 * 4.66e3);
        assertEquals(38.0, Math.toDegrees(Math.atan2(up, along)), .005 * 38);
    }

    @Test
    void a_free_leg_loads_knee_and_hip_as_the_rows_say() {
        // Reference 4.5, Winter rows: shank level .061·.606·.246; straight leg .161·.447·.491; march .0256. The rows
        // lump
        // shank and foot a little further out than our separate foot does, so our own segments agree within 5 %.
        Posed extended = Solver.pose(Poses.seated(new Leg(90, 0, 0, 0, 0, 0, 0)));
        Posed straight = Solver.pose(Poses.oneLeg(new Leg(90, 0, 0, 0, 0, 0, 0)));
        Posed march = Solver.pose(Poses.oneLeg(new Leg(90, 0, 0, 90, 0, 0, 0)));

        assertEquals(
                .00909,
                lump(.061, .606, extended.rightLeg().knee(), extended.rightLeg().ankle()),
                .01 * .00909);
        assertEquals(
                .0353,
                lump(.161, .447, straight.rightLeg().hip(), straight.rightLeg().ankle()),
                .01 * .0353);
        assertEquals(.0256, .1 * .433 * Build.THIGH + .061 * Build.THIGH, .01 * .0256);

        assertEquals(.00909, size(extended, Joint.KNEE), .05 * .00909);
        assertEquals(.0353, size(straight, Joint.HIP), .05 * .0353);
        assertEquals(.0256, size(march, Joint.HIP), .05 * .0256);
    }

    private static double lump(double mass, double centre, Vec from, Vec to) {
        return Moments.ofWeights(from, List.of(new Bodies.Point(mass, from.towards(to, centre))))
                .length();
    }

    @Test
    void the_low_back_score_ranks_postures_as_disc_pressure_does() {
        // Wilke 1999, L4–L5 disc pressure: standing flexed 1.1 MPa > sitting flexed .83 > standing .50 ~ sitting .46
        double standing = size(Solver.pose(Poses.standing()), Joint.LOW_BACK);
        double flexed = size(Solver.pose(Poses.leaning(60, 0), Poses.STANDING), Joint.LOW_BACK);
        double seated = size(Solver.pose(Poses.seatedLeaning(0)), Joint.LOW_BACK);
        double seatedFlexed = size(Solver.pose(Poses.seatedLeaning(40)), Joint.LOW_BACK);

        assertTrue(flexed > seatedFlexed, flexed + " " + seatedFlexed);
        assertTrue(seatedFlexed > standing && seatedFlexed > seated);
        assertEquals(standing, seated, .01);
    }

    @Test
    void fingertips_reach_the_measured_height_overhead() {
        // ANSUR II: 1.289 H men, 1.278 H women on average; a plain Drillis arm without shoulder-blade lift gives 1.258
        Demands plain = Statics.demands(List.of(new KeyPose("up", Poses.arms(90, 180, 0), Poses.STANDING)));
        Arm lifted = new Arm(90, 180, 0, 0, 0, 0, 25, 0);
        Pose up = Poses.standing().pose().withArm(Side.RIGHT, lifted).withArm(Side.LEFT, lifted);
        Demands withBlade = Statics.demands(List.of(new KeyPose("up", up, Poses.STANDING)));

        assertEquals(1.258, plain.fingertips(), .005);
        assertTrue(withBlade.fingertips() > 1.27 && withBlade.fingertips() < 1.31, "" + withBlade.fingertips());
    }

    private static List<Bodies.Point> hat(Posed posed) {
        Bodies bodies = new Bodies(posed, Masses.WINTER);
        List<Bodies.Point> points = new java.util.ArrayList<>(bodies.all());
        points.removeAll(bodies.leg(Side.RIGHT));
        points.removeAll(bodies.leg(Side.LEFT));
        return points;
    }

    private static double shoulder(double plane, double raise, double elbow) {
        return size(Solver.pose(Poses.arms(plane, raise, elbow), Poses.STANDING), Joint.SHOULDER);
    }

    private static double size(Posed posed, Joint joint) {
        return new Moments(posed, Masses.WINTER).size(joint, Side.RIGHT);
    }

    private static void assertPoint(double x, double y, Vec point, double tolerance) {
        assertEquals(x, point.x(), tolerance);
        assertEquals(y, point.y(), tolerance);
    }
}
