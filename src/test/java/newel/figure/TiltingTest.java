package newel.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
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
import org.junit.jupiter.api.Test;

class TiltingTest {
    @Test
    void hips_that_roll_back_under_a_still_chest_have_one_arrow_down_behind_them() {
        List<KeyPose> poses = List.of(sitting(0, 0), sitting(-8, 8));

        List<Mark.Arrow> arrows = Drawn.arrows(new Drawing(Drawn.scene(poses, Scene.Working.TOGETHER))
                .picture("Name", "Words")
                .frames()
                .get(1));

        Spot hips = Drawn.SIDE.see(new Path(poses).keys().get(1).trunk().pelvis());
        Spot tail = arrows.getFirst().spots().getFirst();
        Spot tip = arrows.getFirst().head().getFirst();
        assertEquals(1, arrows.size());
        assertTrue(tip.y() > tail.y());
        assertTrue(tip.x() < hips.x() && tail.x() < hips.x());
    }

    @Test
    void a_trunk_that_leans_with_the_hips_is_no_tilt() {
        List<KeyPose> poses = List.of(sitting(0, 0), sitting(20, 0));

        assertEquals(Optional.empty(), Tilting.in(Stretch.all(new Path(poses)).getFirst()));
    }

    @Test
    void knees_that_sway_over_feet_that_stay_lead() {
        List<Way> ways = Leading.ways(
                Stretch.all(new Path(List.of(sitting(0, 0), swayed()))).getFirst());

        assertEquals(
                List.of(Piece.What.LEFT_LEG, Piece.What.RIGHT_LEG),
                ways.stream()
                        .map(Way::part)
                        .sorted((a, b) -> a.name().compareTo(b.name()))
                        .toList());
    }

    private static KeyPose swayed() {
        Pose pose = seated(0, 0)
                .withLeg(Side.RIGHT, new Leg(90, 20, 12, 90, 0, 0, 0))
                .withLeg(Side.LEFT, new Leg(90, -20, -12, 90, 0, 0, 0));
        return new KeyPose("swayed", pose, contacts(20));
    }

    private static KeyPose sitting(double tilt, double lumbar) {
        return new KeyPose("sitting " + tilt, seated(tilt, lumbar), contacts(0));
    }

    private static Pose seated(double tilt, double lumbar) {
        Leg bent = new Leg(90 + tilt, 0, 0, 90, 0, 0, 0);
        return new Pose(
                new Pelvis(tilt, 0, 0),
                new Spine(lumbar, 0, 0),
                Pose.NEUTRAL.thorax(),
                Pose.NEUTRAL.neck(),
                0,
                Pose.NEUTRAL.rightArm(),
                Pose.NEUTRAL.leftArm(),
                bent,
                bent);
    }

    /** Toes point where the knees lean, degrees to the right. */
    private static Contacts contacts(double lean) {
        Foot right = new Foot(Foot.Placement.FLAT, .245, .045, 0, 0, lean);
        Foot left = new Foot(Foot.Placement.FLAT, .245, -.045, 0, 0, -lean);
        return new Contacts(Ground.SEAT_EDGE, .27, right, left, Hand.FREE, Hand.FREE, 0, 0);
    }
}
