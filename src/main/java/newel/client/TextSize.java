package newel.client;

/** Body text on papers, in points. */
public enum TextSize {
    LARGE(16),
    LARGER(18),
    LARGEST(22);

    private final int points;

    TextSize(int points) {
        this.points = points;
    }

    public int points() {
        return points;
    }
}
