package newel.figure;

import java.util.List;
import java.util.Set;
import newel.body.KeyPose;

/**
 * What a picture shows.
 *
 * @param camera the view that shows the plane of the movement
 * @param circles the key poses lie on a circle that is gone round and round
 */
public record Scene(
        List<KeyPose> keyPoses, Camera camera, Set<Thing> things, Working working, boolean circles, Look look) {
    /** How the two sides share the work. Poses are written for the right side. */
    public enum Working {
        TOGETHER,
        RIGHT_ARM,
        RIGHT_LEG,
        /** One side, which the picture finds from what moves. */
        ONE_SIDE,
        ALTERNATING
    }
}
