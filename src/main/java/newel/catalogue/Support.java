package newel.catalogue;

/** What steadies the person, from most to least. */
public enum Support {
    /** Bed, or seat with back rest. */
    FULL,
    TWO_HANDS,
    ONE_HAND,
    FINGERTIPS,
    NONE
}
