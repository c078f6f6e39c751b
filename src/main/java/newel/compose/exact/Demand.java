package newel.compose.exact;

/** At least this many of the chosen candidates serve it. */
public record Demand(String name, int least) {
    public static final int MOST = 7;

    public Demand {
        if (least < 0 || least > MOST) {
            throw new IllegalArgumentException(name + ": " + least);
        }
    }
}
