package newel.body;

/** A point or direction: X forward, Y up, Z to the person's right; lengths in fractions of stature. */
public record Vec(double x, double y, double z) {
    public static final Vec ZERO = new Vec(0, 0, 0);
    public static final Vec UP = new Vec(0, 1, 0);

    public Vec plus(Vec o) {
        return new Vec(x + o.x, y + o.y, z + o.z);
    }

    public Vec minus(Vec o) {
        return new Vec(x - o.x, y - o.y, z - o.z);
    }

    public Vec times(double k) {
        return new Vec(k * x, k * y, k * z);
    }

    public double dot(Vec o) {
        return x * o.x + y * o.y + z * o.z;
    }

    public Vec cross(Vec o) {
        return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    public double distance(Vec o) {
        return minus(o).length();
    }

    /** The same direction at length one; the zero vector stays zero. */
    public Vec unit() {
        double length = length();
        return length < 1e-12 ? ZERO : times(1 / length);
    }

    public Vec towards(Vec o, double share) {
        return plus(o.minus(this).times(share));
    }
}
