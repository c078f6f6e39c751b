package newel.figure;

/** A point of the picture: x to the right, y down, depth towards the viewer. */
public record Spot(double x, double y, double depth) {
    double distance(Spot o) {
        return Math.hypot(x - o.x, y - o.y);
    }
}
