package newel.body;

/**
 * What a hand does. For things in the room `at` is the point it meets (palm, `HAND_POINT` beyond the wrist) in statures
 * in the pose's own frame; for the thigh `at.x` is the share of the way from hip to knee; for a towel, the head or a free
 * hand `at` is unused. Share is the part of the body weight that the hand carries
 * on a support: an estimate, or {@link #LEANS} where the pose itself says how much.
 */
public record Hand(Hold hold, Vec at, double share, Fingers fingers) {
    public enum Hold {
        FREE(false, false),
        CHAIR_BACK(true, true),
        SEAT(true, true),
        ARMREST(true, true),
        COUNTER(true, true),
        RAIL(true, true),
        WALL(true, true),
        /** A fist on a wall, the wrist straight. */
        FIST(true, true),
        BED(true, true),
        FLOOR(true, true),
        THIGH(false, true),
        HEAD(false, false),
        OTHER_HAND(false, true),
        /** Holds the own leg at the shin or behind the thigh; the arm's angles say where. */
        LEG(false, false),
        TOWEL(false, false),
        /** One end of a towel that loops round a foot. */
        TOWEL_FOOT(false, false),
        BAG(false, false),
        BOTTLE(false, false),
        /** A band between both hands. */
        BAND(false, false),
        /** One end of a band that runs round the feet. */
        BAND_FOOT(false, false);

        private final boolean support;
        private final boolean solved;

        Hold(boolean support, boolean solved) {
            this.support = support;
            this.solved = solved;
        }

        /** What it holds hangs from this hand with its mass. */
        public boolean holds() {
            return switch (this) {
                case BAG, BOTTLE, TOWEL, OTHER_HAND, BAND, BAND_FOOT, TOWEL_FOOT -> true;
                case FREE, CHAIR_BACK, SEAT, ARMREST, COUNTER, RAIL, WALL, FIST, BED, FLOOR, THIGH, HEAD, LEG -> false;
            };
        }

        /** A fixed thing that steadies a standing person. */
        public boolean support() {
            return support;
        }

        /** The hand is brought to its point; otherwise the arm's angles stand. */
        public boolean solved() {
            return solved;
        }
    }

    /** As much as a body leaning on its hands needs. */
    public static final double LEANS = Double.NaN;

    public static final Hand FREE = of(Hold.FREE, Vec.ZERO, 0);

    public static Hand of(Hold hold, Vec at, double share) {
        return new Hand(hold, at, share, Fingers.LOOSE);
    }
}
