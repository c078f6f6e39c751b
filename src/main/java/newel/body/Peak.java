package newel.body;

/** The largest value over a path, left and right. For the spine, left and right tell the direction of bend or turn. */
public record Peak(double left, double right) {
    public static final Peak ZERO = new Peak(0, 0);

    public double on(Side side) {
        return side == Side.RIGHT ? right : left;
    }

    public double most() {
        return Math.max(left, right);
    }

    public Peak max(Peak o) {
        return new Peak(Math.max(left, o.left), Math.max(right, o.right));
    }
}
