package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Hull;
import newel.body.Rot;
import newel.body.Vec;

/** Round solids and their outlines as the camera sees them. */
final class Solid {
    private static final int POINTS = 20;
    private static final Hull<Spot> FLAT = new Hull<>(Spot::x, Spot::y, 1e-9);

    /** Half axes along the solid's own X, Y and Z. */
    record Ellipsoid(Vec centre, Rot turn, double x, double y, double z) {
        static Ellipsoid ball(Vec centre, double radius) {
            return new Ellipsoid(centre, Rot.NONE, radius, radius, radius);
        }

        Vec surface(Vec direction) {
            return centre.plus(turn.of(new Vec(direction.x() * x, direction.y() * y, direction.z() * z)));
        }
    }

    /** The edge of an ellipsoid: where a tangent plane stands square to each direction of the picture. */
    static List<Spot> edge(Camera camera, Ellipsoid e) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            double angle = 2 * Math.PI * i / POINTS;
            Vec out = camera.right().times(Math.cos(angle)).plus(camera.up().times(Math.sin(angle)));
            Vec own = e.turn().inverse().of(out);
            Vec scaled = new Vec(own.x() * e.x(), own.y() * e.y(), own.z() * e.z());
            spots.add(camera.see(e.surface(scaled.unit())));
        }
        return spots;
    }

    /** Outline of everything between the solids. */
    static List<Spot> hull(Camera camera, List<Ellipsoid> solids) {
        List<Spot> spots = new ArrayList<>();
        solids.forEach(solid -> spots.addAll(edge(camera, solid)));
        return hull(spots);
    }

    static List<Spot> corners(Camera camera, List<Vec> corners) {
        return hull(corners.stream().map(camera::see).toList());
    }

    static List<Spot> hull(List<Spot> spots) {
        return FLAT.of(spots);
    }

    private Solid() {}
}
