package newel.figure;

import java.util.List;
import java.util.function.Function;
import newel.body.Posed;
import newel.body.Vec;

/** The way that one point of the body goes, in statures. */
record Way(Piece.What part, List<Vec> points) {
    static Way of(Piece.What part, Stretch stretch, Function<Posed, Vec> point) {
        return new Way(part, stretch.poses().stream().map(point).toList());
    }

    double length() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i).distance(points.get(i - 1));
        }
        return sum;
    }

    List<Spot> seen(Camera camera) {
        return points.stream().map(camera::see).toList();
    }

    /** The part of its length that a camera shows, 0 to 1. */
    double shown(Camera camera) {
        return Stroke.length(seen(camera)) / Camera.SCALE / Math.max(1e-9, length());
    }

    /** On the other side of the body. */
    Way mirrored() {
        return new Way(
                part, points.stream().map(v -> new Vec(v.x(), v.y(), -v.z())).toList());
    }
}
