package newel.client;

/** A test that an instructor can do in a home, and the unit of its value. A walk's course is part of what it is. */
public enum Measure {
    CHAIR_STAND_30S("30-second chair stand", Unit.STANDS),
    CHAIR_STAND_5X("Five chair stands", Unit.SECONDS),
    ARM_CURL_30S("30-second arm curl", Unit.CURLS),
    STEP_2MIN("2-minute step", Unit.STEPS),
    CHAIR_REACH("Chair sit and reach", Unit.INCHES),
    BACK_SCRATCH("Back scratch", Unit.INCHES),
    UP_AND_GO_8FT("8-foot up and go", Unit.SECONDS),
    UP_AND_GO_3M("Up and go over 3 metres", Unit.SECONDS),
    FOUR_STAGE_BALANCE("Four-stage balance", Unit.STAGES),
    SINGLE_LEG_STANCE("Standing on one leg, eyes open", Unit.SECONDS),
    TANDEM_STANCE("Standing heel to toe", Unit.SECONDS),
    WALK_4M("4-metre walk", Unit.SECONDS),
    WALK_3M("3-metre walk", Unit.SECONDS),
    GAIT_SPEED("Usual walking speed", Unit.METRES_PER_SECOND),
    SPPB("Short physical performance battery", Unit.POINTS),
    GRIP("Grip strength", Unit.KILOGRAMS),
    WALK_6MIN("6-minute walk", Unit.YARDS),
    FOUR_SQUARE_STEP("Four square step", Unit.SECONDS);

    private final String words;
    private final Unit unit;

    Measure(String words, Unit unit) {
        this.words = words;
        this.unit = unit;
    }

    public String words() {
        return words;
    }

    public Unit unit() {
        return unit;
    }

    /** Metres walked against the clock at the usual pace; 0 for every other test. */
    public int course() {
        return switch (this) {
            case WALK_4M -> 4;
            case WALK_3M -> 3;
            default -> 0;
        };
    }
}
