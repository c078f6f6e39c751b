package newel.figure;

import java.util.List;
import newel.body.Hand;
import newel.body.KeyPose;

/** Turns the camera a little where the written view would hide what matters. */
final class ViewPoint {
    private static final double FROM_THE_SIDE = -12;
    private static final double TO_SHOW_A_TOWEL = -28;
    private static final double FACED = 0.2;
    private static final double BESIDE = 0.15;

    static Camera of(Scene scene) {
        Camera written = scene.camera();
        return new Camera(yaw(written.yaw(), scene.keyPoses()), written.pitch());
    }

    private static double yaw(double written, List<KeyPose> keyPoses) {
        if (written < FROM_THE_SIDE && keyPoses.stream().anyMatch(ViewPoint::facesWall)) {
            return -written;
        }
        if (written < FROM_THE_SIDE && written > -80 && keyPoses.stream().anyMatch(ViewPoint::inFront)) {
            return FROM_THE_SIDE;
        }
        if (Math.abs(written) < -TO_SHOW_A_TOWEL && keyPoses.stream().anyMatch(ViewPoint::towel)) {
            return TO_SHOW_A_TOWEL;
        }
        return written;
    }

    /** A wall that is faced is seen over the shoulder. */
    private static boolean facesWall(KeyPose key) {
        Hand hand = key.contacts().rightHand();
        return hand.hold() == Hand.Hold.WALL
                && hand.at().x() > 0.2
                && Math.abs(hand.at().z()) < FACED;
    }

    /** Something in front of the person would stand before them, seen from the front. */
    private static boolean inFront(KeyPose key) {
        return inFront(key.contacts().rightHand()) || inFront(key.contacts().leftHand());
    }

    private static boolean inFront(Hand hand) {
        return switch (hand.hold()) {
            case COUNTER, RAIL, CHAIR_BACK, WALL, FIST ->
                hand.at().x() > 0.08 && Math.abs(hand.at().z()) < BESIDE;
            case FREE,
                    SEAT,
                    ARMREST,
                    BED,
                    FLOOR,
                    THIGH,
                    HEAD,
                    LEG,
                    OTHER_HAND,
                    TOWEL,
                    BAG,
                    BOTTLE,
                    BAND,
                    BAND_FOOT,
                    TOWEL_FOOT -> false;
        };
    }

    /** A towel across the body is a dot from the side. */
    private static boolean towel(KeyPose key) {
        return key.contacts().rightHand().hold() == Hand.Hold.TOWEL
                && key.contacts().leftHand().hold() == Hand.Hold.TOWEL;
    }

    private ViewPoint() {}
}
