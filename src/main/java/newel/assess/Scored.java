package newel.assess;

import newel.client.Quantity;
import newel.client.Unit;

/** A score as it is shown. Judging never uses the rounded figure. */
public final class Scored {
    private static final int DECIMALS = 2;

    /** One more, so that a speed just over 0.8 m/s does not look like 0.8. */
    private static final int DECIMALS_OF_A_SPEED = 3;

    public static Quantity rounded(Quantity score) {
        int decimals = score.unit() == Unit.METRES_PER_SECOND ? DECIMALS_OF_A_SPEED : DECIMALS;
        return score.amount().scale() > decimals ? score.rounded(decimals) : score;
    }

    private Scored() {}
}
