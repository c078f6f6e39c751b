package newel.figure;

/** What stands or lies in the room that no hand, foot or seat shows. */
public enum Thing {
    /** The person leans on a wall behind. */
    WALL_BEHIND,
    /** The chair's back stands against a wall. */
    CHAIR_AT_WALL,
    /** A chair stands close behind whoever stands, for safety. */
    CHAIR_BEHIND,
    CUSHION_ON_SEAT,
    CUSHION_AT_BACK,
    /** Pillows prop up whoever sits on the bed. */
    PILLOWS_AT_BACK,
    ROLL_UNDER_KNEE,
    ROLL_UNDER_CALF,
    TOWEL_UNDER_FOOT,
    /** To be stepped over. */
    ROLL_AHEAD,
    /** A second one, a long step further. */
    SECOND_ROLL,
    ROLL_BESIDE,
    FLAT_TOWEL_AHEAD,
    CUSHION_AHEAD,
    CUSHIONS_TO_KNEEL_ON,
    /** On the bed, to catch the knees that lean to the right. */
    CUSHION_BESIDE_KNEES,
    /** The same on either side. */
    CUSHIONS_BESIDE_KNEES,
    /** A folded towel that the right hand wipes with. */
    TOWEL_UNDER_HAND,
    TOWEL_BEHIND_THIGH,
    STOOL_BESIDE_BED,
    /** A hand on a wall well out to the side is at a door frame. */
    DOORWAY,
    /** More than one step. */
    STAIRS,
    /** A line on the floor to walk along. */
    LINE,
    BAG_ON_FLOOR,
    BAG_AT_CHEST,
    /** The hips rest on a counter's edge behind. */
    COUNTER_BEHIND,
    /** A counter stands at hand, and no hand is on it. */
    COUNTER_NEAR,
    TOWEL_ROLL_IN_HANDS,
    /** The counter holds a sink. */
    SINK,
    BAND_ROUND_ANKLES,
    BAND_TO_CHAIR
}
