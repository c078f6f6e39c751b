package newel.compose.exact;

/** Work that may still be done, counted in labels made and table cells filled. */
public final class Budget {
    /** Some eight seconds of one core (measured once, a rough guide only). */
    public static final long LARGE = 60_000_000;
    /** Some half a second. */
    public static final long INTERACTIVE = 4_000_000;

    /** A table cell takes about this fraction of the time of a label. */
    private static final int CELLS_A_LABEL = 16;

    private long left;

    public Budget(long labels) {
        left = labels * CELLS_A_LABEL;
    }

    void labels(long count) {
        left -= count * CELLS_A_LABEL;
    }

    void cells(long count) {
        left -= count;
    }

    public boolean spent() {
        return left <= 0;
    }
}
