package newel.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold for any pose; the seed is in the name of each failure. */
class BodyPropertiesTest {
    private static final long SEED = 20260312;

    @Test
    void a_mirrored_pose_has_mirrored_joints_and_loads() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            Pose pose = any(random);
            Posed one = Solver.pose(pose, Poses.STANDING);
            Posed other = Solver.pose(mirrored(pose), Poses.STANDING);

            String seed = "seed " + SEED + " run " + i;
            assertMirrored(one.rightArm().wrist(), other.leftArm().wrist(), seed);
            assertMirrored(one.leftLeg().knee(), other.rightLeg().knee(), seed);
            for (Joint joint : Joint.values()) {
                double right = new Moments(one, Masses.WINTER).size(joint, Side.RIGHT);
                double left = new Moments(other, Masses.WINTER).size(joint, Side.LEFT);
                assertEquals(right, left, 1e-9, seed + " " + joint);
            }
        }
    }

    @Test
    void angles_read_back_from_a_solved_pose_are_those_it_was_given() {
        Random random = new Random(SEED);
        for (int i = 0; i < 500; i++) {
            Pose pose = any(random);
            Posed posed = Solver.at(pose, Contacts.NONE, Vec.UP);
            for (Side side : Side.values()) {
                Arm arm = Arms.angles(posed.trunk(), pose.arm(side), posed.arm(side), side);
                Leg leg = Legs.angles(posed.trunk(), pose.leg(side), posed.leg(side), side);
                assertEquals(pose.arm(side).raise(), arm.raise(), 1e-6, "seed " + SEED);
                assertEquals(pose.arm(side).plane(), arm.plane(), 1e-6);
                assertEquals(pose.arm(side).turn(), arm.turn(), 1e-6);
                assertEquals(pose.arm(side).elbow(), arm.elbow(), 1e-6);
                assertEquals(pose.leg(side).flex(), leg.flex(), 1e-6);
                assertEquals(pose.leg(side).abd(), leg.abd(), 1e-6);
                assertEquals(pose.leg(side).out(), leg.out(), 1e-6);
                assertEquals(pose.leg(side).knee(), leg.knee(), 1e-6);
                assertEquals(pose.leg(side).ankle(), leg.ankle(), 1e-6);
            }
        }
    }

    @Test
    void two_bones_meet_every_target_within_their_reach_and_keep_their_lengths() {
        Random random = new Random(SEED);
        for (int i = 0; i < 1000; i++) {
            Vec target = new Vec(random.nextDouble() - .5, random.nextDouble() - .5, random.nextDouble() - .5);
            TwoBones.Reached r = TwoBones.LEG.reach(Vec.ZERO, target, new Vec(0.1, 0.2, 1), true);

            assertEquals(Build.THIGH, r.middle().length(), 1e-9, "seed " + SEED);
            assertEquals(Build.SHANK, r.end().distance(r.middle()), 1e-9);
            double folded = Math.sqrt(.245 * .245 + .246 * .246 + 2 * .245 * .246 * Math.cos(Math.toRadians(150)));
            if (target.length() < .491 && target.length() > folded) {
                assertEquals(0, r.missed(), 1e-9);
            }
        }
    }

    @Test
    void the_way_between_two_arm_poses_never_leaves_the_great_circle() {
        Arm side = new Arm(0, 100, 20, 0, 0, 0, 0, 0);
        Arm front = new Arm(90, 100, -20, 0, 0, 0, 0, 0);
        Vec a = direction(side);
        Vec b = direction(front);
        Vec normal = a.cross(b).unit();
        double whole = Math.acos(a.dot(b));

        for (double t = 0; t <= 1; t += .1) {
            Vec d = direction(Blend.of(side, front, t));
            assertEquals(0, d.dot(normal), 1e-9);
            assertEquals(t * whole, Math.acos(Math.min(1, a.dot(d))), 1e-6);
        }
    }

    @Test
    void an_arm_passing_through_hanging_moves_without_a_jump() {
        Arm behind = new Arm(-90, 30, 0, 0, 0, 0, 0, 0);
        Arm front = new Arm(90, 90, 0, 0, 0, 0, 0, 0);
        Vec last = direction(behind);
        for (int i = 1; i <= 120; i++) {
            Vec next = direction(Blend.of(behind, front, i / 120.0));
            assertEquals(Math.toRadians(1), Math.acos(Math.min(1, last.dot(next))), 1e-6);
            last = next;
        }
    }

    @Test
    void the_hull_margin_equals_a_search_over_all_edges_and_directions() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            List<Vec> points = new ArrayList<>();
            for (int p = 0; p < 8; p++) {
                points.add(new Vec(random.nextDouble(), 0, random.nextDouble()));
            }
            Base base = Base.around(points);
            Vec probe = new Vec(random.nextDouble() * 1.4 - .2, 0, random.nextDouble() * 1.4 - .2);

            // Inside: least distance to a supporting line over many directions. Outside: negative.
            double least = Double.POSITIVE_INFINITY;
            for (int d = 0; d < 7200; d++) {
                double angle = Math.PI * d / 3600;
                Vec out = new Vec(Math.cos(angle), 0, Math.sin(angle));
                double edge = points.stream().mapToDouble(out::dot).max().orElseThrow();
                least = Math.min(least, edge - out.dot(probe));
            }
            double margin = base.margin(probe);
            assertEquals(least >= 0, margin >= 0, "seed " + SEED + " run " + i);
            if (margin >= 0) {
                assertEquals(least, margin, 2e-3);
            }
        }
    }

    @Test
    void no_weight_asks_no_moment_and_twice_the_weight_asks_twice() {
        Pose level = Poses.arms(90, 90, 0);
        Vec one = Moments.ofWeights(Vec.ZERO, List.of(new Bodies.Point(1, new Vec(.3, 0, .1))));
        Vec two = Moments.ofWeights(Vec.ZERO, List.of(new Bodies.Point(2, new Vec(.3, 0, .1))));

        assertEquals(one.times(2), two);
        assertEquals(0, Moments.ofWeights(Vec.ZERO, List.of()).length());
        assertTrue(new Moments(Solver.pose(level, Poses.STANDING), Masses.WINTER).size(Joint.SHOULDER, Side.LEFT) > 0);
    }

    @Test
    void trimming_to_the_whole_changes_nothing_and_to_nothing_stays_at_the_start() {
        List<KeyPose> raise = List.of(
                new KeyPose("down", Poses.arms(0, 10, 0), Poses.STANDING),
                new KeyPose("up", Poses.arms(0, 150, 0), Poses.STANDING));

        assertEquals(raise, Trimming.trimmed(raise, Part.ARMS, 1, 1));
        Demands half = Statics.demands(Trimming.trimmed(raise, Part.ARMS, 1, .5));
        assertEquals(150, half.angle(Motion.SHOULDER_RAISE, Side.LEFT), 1e-6);
        assertEquals(80, half.angle(Motion.SHOULDER_RAISE, Side.RIGHT), 1e-6);
        assertEquals(
                10,
                Statics.demands(Trimming.trimmed(raise, Part.ARMS, 0, 0)).angle(Motion.SHOULDER_RAISE, Side.RIGHT),
                1e-6);
    }

    @Test
    void feet_on_the_floor_stay_there_all_the_way_down_a_knee_bend() {
        KeyPose bent = new KeyPose("bent", Poses.legs(Pose.NEUTRAL, new Leg(60, 0, 0, 70, 10, 0, 0)), Poses.STANDING);
        for (Posed posed : new Path(List.of(Poses.standing(), bent)).samples(8)) {
            for (Side side : Side.values()) {
                assertEquals(0, posed.leg(side).heel().y(), 1e-6);
                assertEquals(0, posed.leg(side).ball().y(), 1e-6);
                assertEquals(side.sign() * .0455, posed.leg(side).ankle().z(), 1e-6);
            }
        }
    }

    private static Vec direction(Arm arm) {
        return Angles.swing(arm.plane(), arm.raise(), Side.RIGHT).y().times(-1);
    }

    private static Pose any(Random random) {
        Spine spine = new Spine(random.nextInt(40) - 10, random.nextInt(30) - 15, random.nextInt(40) - 20);
        return new Pose(
                new Pelvis(random.nextInt(30), random.nextInt(10) - 5, random.nextInt(10) - 5),
                spine,
                spine,
                spine,
                5,
                arm(random),
                arm(random),
                leg(random),
                leg(random));
    }

    private static Arm arm(Random random) {
        return new Arm(
                random.nextInt(200) - 60,
                5 + random.nextInt(165),
                random.nextInt(100) - 50,
                random.nextInt(140),
                0,
                0,
                0,
                0);
    }

    private static Leg leg(Random random) {
        return new Leg(
                random.nextInt(110),
                random.nextInt(40) - 10,
                random.nextInt(40) - 20,
                random.nextInt(120),
                random.nextInt(40) - 25,
                0,
                0);
    }

    private static Pose mirrored(Pose p) {
        return new Pose(
                new Pelvis(p.pelvis().tilt(), -p.pelvis().list(), -p.pelvis().turn()),
                mirrored(p.lumbar()),
                mirrored(p.thorax()),
                mirrored(p.neck()),
                p.nod(),
                p.leftArm(),
                p.rightArm(),
                p.leftLeg(),
                p.rightLeg());
    }

    private static Spine mirrored(Spine s) {
        return new Spine(s.flex(), -s.side(), -s.turn());
    }

    private static void assertMirrored(Vec a, Vec b, String message) {
        assertEquals(0, a.distance(new Vec(b.x(), b.y(), -b.z())), 1e-9, message);
    }
}
