package newel.catalogue;

/** The posture a variant is done in, from the easiest to hold to the hardest. */
public enum Position {
    LYING,
    SEATED_BACK,
    SEATED_EDGE,
    STANDING,
    STEPPING,
    FLOOR
}
