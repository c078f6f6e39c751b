package newel.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import newel.body.Arm;
import newel.body.Contacts;
import newel.body.Foot;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Leg;
import newel.body.Path;
import newel.body.Pelvis;
import newel.body.Pose;
import newel.body.Side;
import newel.body.Spine;
import newel.body.Vec;
import org.junit.jupiter.api.Test;

class CaptionTest {
    private static final Foot LEFT_DOWN = new Foot(Foot.Placement.FLAT, 0, -.05, 0, 0, 0);
    private static final KeyPose STANDS = Drawn.standing("stands", Pose.NEUTRAL, Hand.FREE, 0);

    @Test
    void the_leg_decides_which_side_is_first_though_the_other_arm_swings_further() {
        Pose lifted = armUp(Side.LEFT).withLeg(Side.RIGHT, new Leg(60, 0, 0, 70, 0, 0, 0));
        KeyPose march = new KeyPose("march", lifted, contacts(Ground.FEET, Foot.OFF, LEFT_DOWN, Hand.FREE));

        assertEquals(Optional.of("right, then left"), side(Scene.Working.ALTERNATING, STANDS, march));
    }

    @Test
    void an_arm_decides_where_no_leg_moves() {
        KeyPose up = Drawn.standing("up", armUp(Side.LEFT), Hand.FREE, 0);

        assertEquals(Optional.of("left, then right"), side(Scene.Working.ALTERNATING, STANDS, up));
    }

    @Test
    void a_turn_of_one_side_says_where_to_when_the_hand_only_finds_its_hold() {
        assertEquals(Optional.of("to the right"), side(Scene.Working.ONE_SIDE, STANDS, turned(30)));
        assertEquals(Optional.of("to the left"), side(Scene.Working.ONE_SIDE, STANDS, turned(-30)));
    }

    @Test
    void lying_a_leg_that_is_drawn_in_does_not_take_the_name_of_the_one_that_is_stretched() {
        Pose flat = lying(new Leg(0, 0, 0, 0, 0, 0, 0));
        Pose drawnIn = lying(new Leg(98, 0, 0, 112, 0, 0, 0));
        Contacts bed = contacts(Ground.BED, Foot.OFF, Foot.OFF, Hand.FREE);

        assertEquals(
                Optional.of("right leg"),
                side(Scene.Working.RIGHT_LEG, new KeyPose("flat", flat, bed), new KeyPose("in", drawnIn, bed)));
    }

    @Test
    void standing_the_leg_that_steps_is_named() {
        Pose lifted = Pose.NEUTRAL.withLeg(Side.LEFT, new Leg(60, 0, 0, 70, 0, 0, 0));
        Foot right = new Foot(Foot.Placement.FLAT, 0, .05, 0, 0, 0);
        KeyPose step = new KeyPose("step", lifted, contacts(Ground.FEET, right, Foot.OFF, Hand.FREE));

        assertEquals(Optional.of("left leg"), side(Scene.Working.RIGHT_LEG, STANDS, step));
    }

    private static Optional<String> side(Scene.Working working, KeyPose from, KeyPose to) {
        List<KeyPose> poses = List.of(from, to);
        return Caption.side(Drawn.scene(poses, working), Stretch.all(new Path(poses)));
    }

    private static Pose armUp(Side side) {
        return Pose.NEUTRAL.withArm(side, new Arm(90, 140, 0, 0, 0, 0, 0, 0));
    }

    /** The right hand goes up to a rail behind. */
    private static KeyPose turned(double degrees) {
        Pose turned = new Pose(
                Pose.NEUTRAL.pelvis(),
                Pose.NEUTRAL.lumbar(),
                new Spine(0, 0, degrees),
                Pose.NEUTRAL.neck(),
                0,
                new Arm(-60, 50, 0, 30, 0, 0, 0, 0),
                Pose.NEUTRAL.leftArm(),
                Pose.NEUTRAL.rightLeg(),
                Pose.NEUTRAL.leftLeg());
        Foot right = new Foot(Foot.Placement.FLAT, 0, .05, 0, 0, 0);
        Hand rail = Hand.of(Hand.Hold.RAIL, new Vec(-.15, .55, .25), 0);
        return new KeyPose("turned", turned, new Contacts(Ground.FEET, 0, right, LEFT_DOWN, rail, Hand.FREE, 0, 0));
    }

    private static Pose lying(Leg left) {
        return new Pose(
                        new Pelvis(-90, 0, 0),
                        Pose.NEUTRAL.lumbar(),
                        Pose.NEUTRAL.thorax(),
                        Pose.NEUTRAL.neck(),
                        0,
                        Pose.NEUTRAL.rightArm(),
                        Pose.NEUTRAL.leftArm(),
                        Pose.NEUTRAL.rightLeg(),
                        Pose.NEUTRAL.leftLeg())
                .withLeg(Side.LEFT, left);
    }

    private static Contacts contacts(Ground ground, Foot right, Foot left, Hand hand) {
        return new Contacts(ground, 0, right, left, hand, hand, 0, 0);
    }
}
