package newel.catalogue;

/** Something a variant brings with it that a limit may rule out and that its poses alone do not show. */
public enum Trait {
    /** Breath is easily held against effort. */
    STRAIN,
    IMPACT,
    KNEELING,
    LYING_FLAT,
    LOADED_TWIST,
    QUICK_POSITION_CHANGE,
    QUICK_HEAD_TURN,
    HEAD_TURN,
    /** Presses a hand down on the own leg. */
    HAND_PRESS,
    /** Lifts something from near the floor. */
    LIFT_FROM_FLOOR,
    /** Gets down to the floor or up from it. */
    FLOOR_TRANSFER
}
