package newel.assess;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import newel.client.Part;

/** The four stances, each narrower than the one before; the first that is not held ends the test. */
public final class FourStages {
    /** CDC STEADI 2017 (from memory but for heel to toe). */
    public static final BigDecimal HOLD = BigDecimal.TEN;

    public static final List<Part> STANCES = List.of(Part.SIDE_BY_SIDE, Part.SEMI_TANDEM, Part.TANDEM, Part.ONE_LEG);

    /** How many were held, one after the other from the easiest. */
    static int reached(Map<Part, BigDecimal> parts) {
        int reached = 0;
        while (reached < STANCES.size() && held(parts.get(STANCES.get(reached)))) {
            reached++;
        }
        return reached;
    }

    private static boolean held(BigDecimal seconds) {
        return seconds != null && seconds.compareTo(HOLD) >= 0;
    }

    private FourStages() {}
}
