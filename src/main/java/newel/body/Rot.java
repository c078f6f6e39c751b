package newel.body;

/**
 * A rotation, as the images of X, Y and Z. The about-axis makers take degrees and turn right-handed; products read from
 * the outside in, so that parent.then(child) is the child's rotation in the world.
 */
public record Rot(Vec x, Vec y, Vec z) {
    public static final Rot NONE = new Rot(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1));

    public static Rot aboutX(double degrees) {
        double c = cos(degrees);
        double s = sin(degrees);
        return new Rot(new Vec(1, 0, 0), new Vec(0, c, s), new Vec(0, -s, c));
    }

    public static Rot aboutY(double degrees) {
        double c = cos(degrees);
        double s = sin(degrees);
        return new Rot(new Vec(c, 0, -s), new Vec(0, 1, 0), new Vec(s, 0, c));
    }

    public static Rot aboutZ(double degrees) {
        double c = cos(degrees);
        double s = sin(degrees);
        return new Rot(new Vec(c, s, 0), new Vec(-s, c, 0), new Vec(0, 0, 1));
    }

    /** A bone whose length runs along −Y and whose hinge axis is Z. */
    static Rot bone(Vec along, Vec hinge) {
        Vec up = along.unit().times(-1);
        Vec axis = hinge.minus(up.times(hinge.dot(up))).unit();
        return new Rot(up.cross(axis), up, axis);
    }

    public Vec of(Vec v) {
        return x.times(v.x()).plus(y.times(v.y())).plus(z.times(v.z()));
    }

    public Rot then(Rot child) {
        return new Rot(of(child.x), of(child.y), of(child.z));
    }

    public Rot inverse() {
        return new Rot(new Vec(x.x(), y.x(), z.x()), new Vec(x.y(), y.y(), z.y()), new Vec(x.z(), y.z(), z.z()));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }
}
