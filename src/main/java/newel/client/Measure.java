package newel.client;

/** A test that an instructor can do in a home, and the unit of its value. */
public enum Measure {
    CHAIR_STAND_30S("30-second chair stand", "stands"),
    CHAIR_STAND_5X("Five chair stands", "s"),
    ARM_CURL_30S("30-second arm curl", "curls"),
    STEP_2MIN("2-minute step", "steps"),
    CHAIR_REACH("Chair sit and reach", "in"),
    BACK_SCRATCH("Back scratch", "in"),
    UP_AND_GO_8FT("8-foot up and go", "s"),
    UP_AND_GO_3M("Up and go over 3 metres", "s"),
    WALK_6MIN("6-minute walk", "yd"),
    GAIT_SPEED("Usual walking speed", "m/s"),
    GRIP("Grip strength", "kg"),
    SINGLE_LEG_STANCE("Standing on one leg, eyes open", "s"),
    TANDEM_STANCE("Standing heel to toe", "s"),
    FOUR_SQUARE_STEP("Four square step", "s");

    private final String words;
    private final String unit;

    Measure(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    public String words() {
        return words;
    }

    public String unit() {
        return unit;
    }
}
