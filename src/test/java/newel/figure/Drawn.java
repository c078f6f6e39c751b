package newel.figure;

import java.util.List;
import java.util.Set;
import newel.body.Arm;
import newel.body.Contacts;
import newel.body.Foot;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Leg;
import newel.body.Pose;
import newel.body.Side;

/** Plain scenes that several tests draw. */
final class Drawn {
    static final Camera SIDE = new Camera(0, 8);

    static KeyPose standing(String name, Pose pose, Hand hand, double towel) {
        Foot right = new Foot(Foot.Placement.FLAT, 0, .05, 0, 0, 0);
        Foot left = new Foot(Foot.Placement.FLAT, 0, -.05, 0, 0, 0);
        return new KeyPose(name, pose, new Contacts(Ground.FEET, 0, right, left, hand, hand, towel, 0));
    }

    static Pose arms(double plane, double raise, double elbow) {
        Arm arm = new Arm(plane, raise, 0, elbow, 0, 0, 0, 0);
        return Pose.NEUTRAL.withArm(Side.RIGHT, arm).withArm(Side.LEFT, arm);
    }

    /** The right arm is raised ahead. */
    static List<KeyPose> rightArmUp() {
        Pose up = Pose.NEUTRAL.withArm(Side.RIGHT, new Arm(90, 100, 0, 0, 0, 0, 0, 0));
        return List.of(standing("down", Pose.NEUTRAL, Hand.FREE, 0), standing("up", up, Hand.FREE, 0));
    }

    /** One foot in the air that tips a little about its ankle. */
    static List<KeyPose> smallPump() {
        return List.of(pump("up", 4), pump("down", -2));
    }

    private static KeyPose pump(String name, double ankle) {
        Pose pose = Pose.NEUTRAL.withLeg(Side.RIGHT, new Leg(60, 0, 0, 40, ankle, 0, 0));
        Foot left = new Foot(Foot.Placement.FLAT, 0, -.05, 0, 0, 0);
        return new KeyPose(name, pose, new Contacts(Ground.FEET, 0, Foot.OFF, left, Hand.FREE, Hand.FREE, 0, 0));
    }

    static Scene scene(List<KeyPose> keyPoses, Scene.Working working) {
        return new Scene(keyPoses, SIDE, Set.of(), working, false, Looks.all().getFirst());
    }

    static List<Mark.Arrow> arrows(Frame frame) {
        return frame.marks().stream()
                .filter(mark -> mark instanceof Mark.Arrow)
                .map(mark -> (Mark.Arrow) mark)
                .toList();
    }

    private Drawn() {}
}
