package newel.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Path;
import newel.body.Pose;
import newel.body.Spine;
import newel.body.Vec;
import org.junit.jupiter.api.Test;

class DrawingTest {
    private static List<Frame> frames(List<KeyPose> keyPoses, Scene.Working working) {
        return new Drawing(Drawn.scene(keyPoses, working))
                .picture("Name", "Words")
                .frames();
    }

    @Test
    void an_arrow_ends_where_the_moving_hand_ends() {
        Frame finish = frames(Drawn.rightArmUp(), Scene.Working.ONE_SIDE).get(1);

        Spot tip = Drawn.arrows(finish).getFirst().head().getFirst();
        Spot palm = Drawn.SIDE.see(
                new Path(Drawn.rightArmUp()).keys().get(1).rightArm().palm());
        assertEquals(1, Drawn.arrows(finish).size());
        assertEquals(0, tip.distance(palm), 1e-6);
    }

    @Test
    void a_small_move_gets_a_longer_arrow_in_the_same_direction_clear_of_the_figure() {
        Frame finish = frames(Drawn.smallPump(), Scene.Working.ONE_SIDE).get(1);
        Path path = new Path(Drawn.smallPump());
        Spot from = Drawn.SIDE.see(path.keys().get(0).rightLeg().ball());
        Spot to = Drawn.SIDE.see(path.keys().get(1).rightLeg().ball());

        Mark.Arrow arrow = Drawn.arrows(finish).getFirst();
        Spot tip = arrow.head().getFirst();
        Spot tail = arrow.spots().getFirst();
        assertTrue(from.distance(to) < 8);
        assertTrue(tail.distance(tip) > 28);
        double along = ((tip.x() - tail.x()) * (to.x() - from.x()) + (tip.y() - tail.y()) * (to.y() - from.y()))
                / tail.distance(tip)
                / from.distance(to);
        assertEquals(1, along, .02);
        assertTrue(tip.distance(to) > 10);
    }

    @Test
    void one_sided_work_says_its_side_in_words_and_two_sided_work_says_nothing() {
        assertEquals(
                List.of("right arm"),
                words(frames(Drawn.rightArmUp(), Scene.Working.ONE_SIDE).get(1)));
        assertEquals(
                List.of("right, then left"),
                words(frames(Drawn.rightArmUp(), Scene.Working.ALTERNATING).get(1)));
        assertEquals(
                List.of(),
                words(frames(Drawn.rightArmUp(), Scene.Working.TOGETHER).get(1)));
    }

    @Test
    void a_hold_is_one_frame_and_a_move_is_start_and_finish() {
        List<KeyPose> still = Drawn.rightArmUp().subList(0, 1);

        assertEquals(List.of("Hold"), captions(frames(still, Scene.Working.TOGETHER)));
        assertEquals(List.of("Start", "Finish"), captions(frames(Drawn.rightArmUp(), Scene.Working.TOGETHER)));
    }

    @Test
    void three_different_poses_are_three_frames() {
        List<KeyPose> poses = List.of(
                Drawn.standing("start", Drawn.arms(90, 40, 60), Hand.FREE, 0),
                Drawn.standing("out", Drawn.arms(90, 80, 0), Hand.FREE, 0),
                Drawn.standing("up", Drawn.arms(90, 150, 0), Hand.FREE, 0));

        assertEquals(List.of("Start", "On the way", "Finish"), captions(frames(poses, Scene.Working.TOGETHER)));
    }

    @Test
    void a_turn_of_the_trunk_is_seen_from_above_too() {
        Pose turned = new Pose(
                Pose.NEUTRAL.pelvis(),
                Pose.NEUTRAL.lumbar(),
                new Spine(0, 0, 30),
                Pose.NEUTRAL.neck(),
                0,
                Pose.NEUTRAL.rightArm(),
                Pose.NEUTRAL.leftArm(),
                Pose.NEUTRAL.rightLeg(),
                Pose.NEUTRAL.leftLeg());
        List<KeyPose> poses = List.of(
                Drawn.standing("ahead", Pose.NEUTRAL, Hand.FREE, 0), Drawn.standing("turned", turned, Hand.FREE, 0));

        assertEquals(List.of("Start", "Finish", "From above"), captions(frames(poses, Scene.Working.ONE_SIDE)));
    }

    @Test
    void hands_that_come_together_let_the_towel_sag_and_it_keeps_its_length() {
        Hand towel = Hand.of(Hand.Hold.TOWEL, Vec.ZERO, 0);
        List<KeyPose> poses = List.of(
                Drawn.standing("taut", Drawn.arms(60, 60, 20), towel, 0.5),
                Drawn.standing("slack", Drawn.arms(90, 40, 60), towel, 0));
        Path path = new Path(poses);
        double held = Towel.length(path.keys());

        List<Piece> pieces = new Towel(new Brush(Drawn.SIDE), path.keys().get(1), Set.of(), held).pieces();

        assertEquals(.5, held, .01);
        double lowest = Bounds.of(pieces.getFirst().marks().get(1).spots()).bottom();
        Spot palm = Drawn.SIDE.see(path.keys().get(1).rightArm().palm());
        assertTrue(lowest > palm.y() + 20);
    }

    private static List<String> captions(List<Frame> frames) {
        return frames.stream().map(Frame::caption).toList();
    }

    private static List<String> words(Frame frame) {
        return frame.marks().stream()
                .filter(mark -> mark instanceof Mark.Words)
                .map(mark -> ((Mark.Words) mark).words())
                .toList();
    }
}
