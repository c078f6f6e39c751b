package newel.assess;

/** What else is asked about a result. */
public enum Asked {
    /** Whether the arms were used to stand up. */
    ARMS,
    SIDE,
    AID,
    /** The parts of a battery, in place of one number. */
    PARTS
}
