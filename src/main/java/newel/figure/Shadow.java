package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Posed;
import newel.body.Vec;

/** Grounds the figure: a flat patch on the floor under the pelvis and the feet. */
final class Shadow {
    private static final int CORNERS = 16;
    private static final double HALF_LENGTH = 0.09;
    private static final double HALF_WIDTH = 0.07;
    private static final double AHEAD = 0.02;

    static Mark under(Camera camera, Posed posed) {
        List<Spot> spots = new ArrayList<>();
        for (Vec at : List.of(
                posed.trunk().pelvis(),
                posed.rightLeg().ankle(),
                posed.leftLeg().ankle())) {
            for (int i = 0; i < CORNERS; i++) {
                double angle = 2 * Math.PI * i / CORNERS;
                spots.add(camera.see(new Vec(
                        at.x() + HALF_LENGTH * Math.cos(angle) + AHEAD, 0, at.z() + HALF_WIDTH * Math.sin(angle))));
            }
        }
        double y = camera.see(Vec.ZERO).y();
        List<Spot> flat =
                Solid.hull(spots).stream().map(spot -> flattened(spot, y)).toList();
        return new Mark.Outline(Tone.SHADOW, flat, false);
    }

    /** Seen from low down a patch would hide behind the floor line. */
    private static Spot flattened(Spot s, double floor) {
        return new Spot(s.x(), Math.max(s.y(), floor - 3) + (s.y() > floor ? 2 : 0), s.depth());
    }

    private Shadow() {}
}
