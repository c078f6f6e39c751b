package newel.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import newel.body.Contacts;
import newel.body.Foot;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Leg;
import newel.body.Pose;
import newel.body.Side;
import org.junit.jupiter.api.Test;

class TellingTest {
    private static final KeyPose BEFORE = on("before", down(-.28, .05), down(-.28, -.05), 0);

    @Test
    void of_four_poses_the_one_astride_stays() {
        KeyPose leadOver = on("lead over", Foot.OFF, down(-.28, -.05), 50);
        KeyPose astride = on("astride", down(.02, .05), down(-.28, -.05), 0);
        KeyPose trailOver = on("trail over", down(.02, .05), Foot.OFF, 20);

        assertEquals(
                List.of("before", "lead over", "astride", "trail over"), told(BEFORE, leadOver, astride, trailOver));
    }

    @Test
    void of_four_poses_over_the_same_feet_the_third_is_left_out() {
        KeyPose low = on("low", down(-.28, .05), down(-.28, -.05), 30);
        KeyPose lower = on("lower", down(-.28, .05), down(-.28, -.05), 50);
        KeyPose lowest = on("lowest", down(-.28, .05), down(-.28, -.05), 70);

        assertEquals(List.of("before", "low", "lowest"), told(BEFORE, low, lower, lowest));
    }

    @Test
    void a_small_step_between_is_left_out() {
        KeyPose one = on("one", Foot.OFF, down(-.28, -.05), 40);
        KeyPose two = on("two", down(-.24, .05), down(-.28, -.05), 0);
        KeyPose three = on("three", down(-.24, .05), Foot.OFF, 60);

        assertEquals(List.of("before", "one", "three"), told(BEFORE, one, two, three));
    }

    private static List<String> told(KeyPose... poses) {
        return Telling.told(List.of(poses)).stream().map(KeyPose::name).toList();
    }

    private static Foot down(double x, double z) {
        return new Foot(Foot.Placement.FLAT, x, z, 0, 0, 0);
    }

    private static KeyPose on(String name, Foot right, Foot left, double flex) {
        Leg bent = new Leg(flex, 0, 0, flex, 0, 0, 0);
        Pose pose = Pose.NEUTRAL.withLeg(Side.RIGHT, bent).withLeg(Side.LEFT, bent);
        return new KeyPose(name, pose, new Contacts(Ground.FEET, 0, right, left, Hand.FREE, Hand.FREE, 0, 0));
    }
}
