package newel.limit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import newel.catalogue.Variant;

/** The shares that are tried: tenths of the way, from the whole down to the least that still does its work. */
public final class Shares {
    /** Finer steps than a tenth cannot be seen in a picture (design choice). */
    private static final int STEPS = 10;

    private static final double SAME = 1e-9;

    private static final Comparator<Share> MOST_FIRST = Comparator.comparingInt(Shares::steps)
            .reversed()
            .thenComparing(Share::least, Comparator.reverseOrder())
            .thenComparing(Share::right, Comparator.reverseOrder());

    private Shares() {}

    /** The most of the way first; of equal ones the more even, then the one with more on the right. */
    public static List<Share> mostFirst(Variant variant) {
        List<Double> grid = grid(variant.trim().least());
        List<Share> shares = new ArrayList<>();
        for (double left : grid) {
            for (double right : grid) {
                if (left == right || Coupling.apart(variant)) {
                    shares.add(new Share(left, right));
                }
            }
        }
        shares.sort(MOST_FIRST);
        return List.copyOf(shares);
    }

    private static List<Double> grid(double least) {
        return IntStream.rangeClosed(0, STEPS)
                .mapToObj(step -> (STEPS - step) / (double) STEPS)
                .filter(share -> share == 1 || share > 0 && share >= least - SAME)
                .toList();
    }

    /** Whole numbers, so that equal ways are equal. */
    private static int steps(Share share) {
        return (int) Math.rint((share.left() + share.right()) * STEPS);
    }
}
