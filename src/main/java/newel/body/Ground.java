package newel.body;

/** What carries the pelvis, or that the legs do. */
public enum Ground {
    FEET,
    SEAT_BACK,
    SEAT_EDGE,
    BED,
    KNEES
}
