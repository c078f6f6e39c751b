package newel.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class KneelingTest {
    private static final double TINY = 1e-9;
    private static final Foot DOWN = new Foot(Foot.Placement.KNEELING, 0.1, 0.05, 0.16, 0, 0);
    private static final Foot FLAT = new Foot(Foot.Placement.FLAT, 0.35, -0.05, 0, 0, 0);

    @Test
    void a_knee_stands_on_its_place_above_what_it_kneels_on() {
        Vec knee = Solver.pose(halfKneeling(), contacts(DOWN, FLAT)).rightLeg().knee();

        assertEquals(0.1, knee.x(), TINY);
        assertEquals(0.16 + Furniture.KNEELING, knee.y(), TINY);
        assertEquals(0.05, knee.z(), TINY);
    }

    @Test
    void a_half_kneel_stands_on_a_shank_and_a_foot() {
        Posed posed = Solver.pose(halfKneeling(), contacts(DOWN, FLAT));
        List<Vec> hull = Base.of(posed).hull();

        assertEquals(
                0.35 + Build.TOE_AHEAD, hull.stream().mapToDouble(Vec::x).max().orElseThrow(), TINY);
        assertEquals(0.1 - Build.SHANK, hull.stream().mapToDouble(Vec::x).min().orElseThrow(), TINY);
        assertTrue(Statics.margin(posed, Masses.WINTER) > 0.02);
    }

    @Test
    void on_the_way_down_the_knee_is_not_down_yet() {
        Path path = new Path(List.of(
                new KeyPose("standing", Pose.NEUTRAL, contacts(Ground.FEET, FLAT, FLAT)),
                new KeyPose("half kneel", halfKneeling(), contacts(DOWN, FLAT))));

        assertFalse(path.at(0, 0.5).contacts().rightFoot().kneels());
        assertTrue(path.at(0, 1).contacts().rightFoot().kneels());
    }

    @Test
    void what_one_hand_holds_is_not_carried_by_the_other() {
        Pose level = Pose.NEUTRAL
                .withArm(Side.RIGHT, new Arm(90, 90, 0, 0, 0, 0, 0, 0))
                .withArm(Side.LEFT, new Arm(90, 90, 0, 0, 0, 0, 0, 0));
        Contacts bag = new Contacts(
                Ground.FEET, 0, Foot.OFF, Foot.OFF, Hand.of(Hand.Hold.BAG, Vec.ZERO, 0), Hand.FREE, 0, 0.03);
        Posed posed = Solver.pose(level, bag);

        double heavier =
                Statics.moment(posed, Masses.WINTER, Joint.SHOULDER, Side.RIGHT).length();
        double lighter =
                Statics.moment(posed, Masses.WINTER, Joint.SHOULDER, Side.LEFT).length();

        assertEquals(0.03 * (Build.UPPER_ARM + Build.FOREARM + Build.HAND_POINT), heavier - lighter, 1e-9);
    }

    private static Pose halfKneeling() {
        return Pose.NEUTRAL
                .withLeg(Side.RIGHT, new Leg(0, 0, 0, 90, 0, 0, 0))
                .withLeg(Side.LEFT, new Leg(90, 0, 0, 90, 0, 0, 0));
    }

    private static Contacts contacts(Foot right, Foot left) {
        return contacts(Ground.KNEES, right, left);
    }

    private static Contacts contacts(Ground ground, Foot right, Foot left) {
        return new Contacts(ground, 0, right, left, Hand.FREE, Hand.FREE, 0, 0);
    }
}
