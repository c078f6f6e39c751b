package newel.limit;

/** How much of the way each side goes, 1 the whole way. Variants that couple both sides have equal shares. */
public record Share(double left, double right) {
    public static final Share WHOLE = new Share(1, 1);

    public double least() {
        return Math.min(left, right);
    }

    public double mean() {
        return (left + right) / 2;
    }

    public boolean whole() {
        return left >= 1 && right >= 1;
    }
}
