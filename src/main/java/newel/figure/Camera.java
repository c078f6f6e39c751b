package newel.figure;

import newel.body.Vec;

/**
 * An orthographic camera, degrees: yaw 0 looks from the person's right, −90 from the front, 90 from behind; pitch is how
 * far it is raised.
 */
public record Camera(double yaw, double pitch) {
    /** Points of the picture to one stature. */
    public static final double SCALE = 240;

    public Spot see(Vec v) {
        double across = v.x() * cos(yaw) + v.z() * sin(yaw);
        double near = -v.x() * sin(yaw) + v.z() * cos(yaw);
        double up = v.y() * cos(pitch) - near * sin(pitch);
        return new Spot(SCALE * across, -SCALE * up, SCALE * (near * cos(pitch) + v.y() * sin(pitch)));
    }

    /** Direction from the scene to the viewer. */
    Vec viewer() {
        return new Vec(-sin(yaw) * cos(pitch), sin(pitch), cos(yaw) * cos(pitch));
    }

    /** Picture directions as directions in the world: right, and up. */
    Vec right() {
        return new Vec(cos(yaw), 0, sin(yaw));
    }

    Vec up() {
        return new Vec(sin(yaw) * sin(pitch), cos(pitch), -cos(yaw) * sin(pitch));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }
}
