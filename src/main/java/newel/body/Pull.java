package newel.body;

/**
 * What a held towel or band pulls on a hand, in body weights, towards what its other end is held by. The sizes are estimates
 * for a person of 65 kg (design choice), as the client sets the pull: 10 N for a towel kept taut, 20 N for a towel round a
 * foot and a light band between the hands, 25 N for a light band round the feet. The moments follow from the pose. Hands that
 * press or wring each other are not counted: their size is told by effort alone.
 */
final class Pull {
    private static final double TAUT_TOWEL = 10 / (65 * 9.81);
    private static final double BETWEEN_HANDS = 20 / (65 * 9.81);
    private static final double TOWEL_ROUND_FOOT = 20 / (65 * 9.81);
    private static final double BAND_ROUND_FEET = 25 / (65 * 9.81);

    /** On one hand; nothing when it holds nothing that pulls. */
    static Carried.Force on(Posed posed, Side side) {
        Vec palm = posed.arm(side).palm();
        return switch (posed.contacts().hand(side).hold()) {
            case TOWEL -> Solver.tautTowel(posed.contacts()) ? towards(palm, other(posed, side), TAUT_TOWEL) : none();
            case BAND -> towards(palm, other(posed, side), BETWEEN_HANDS);
            case TOWEL_FOOT -> towards(palm, posed.reachedOut().ball(), TOWEL_ROUND_FOOT);
            case BAND_FOOT -> towards(palm, posed.leg(side).ball(), BAND_ROUND_FEET);
            case FREE,
                    CHAIR_BACK,
                    SEAT,
                    ARMREST,
                    COUNTER,
                    RAIL,
                    WALL,
                    FIST,
                    BED,
                    FLOOR,
                    THIGH,
                    HEAD,
                    OTHER_HAND,
                    LEG,
                    BAG,
                    BOTTLE -> none();
        };
    }

    /** Whether the other end leaves the upper body, so that the low back has to hold against it. */
    static boolean leavesTheTrunk(Hand.Hold hold) {
        return hold == Hand.Hold.TOWEL_FOOT || hold == Hand.Hold.BAND_FOOT;
    }

    private static Vec other(Posed posed, Side side) {
        return posed.arm(side.other()).palm();
    }

    private static Carried.Force towards(Vec from, Vec to, double weights) {
        return new Carried.Force(from, to.minus(from).unit().times(weights));
    }

    private static Carried.Force none() {
        return Carried.Force.NONE;
    }

    private Pull() {}
}
