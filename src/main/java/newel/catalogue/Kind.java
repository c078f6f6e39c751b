package newel.catalogue;

/** The place of a movement in a session. */
public enum Kind {
    PULSE,
    MOBILITY,
    STRENGTH,
    BALANCE,
    STRETCH,
    BREATH
}
