package newel.catalogue;

/** Things a home may have. */
public enum Kit {
    CHAIR,
    ARMCHAIR,
    TOWEL,
    WALL,
    COUNTER,
    STEP,
    STAIRS,
    CUSHION,
    BAG,
    BOTTLE,
    BAND,
    BED
}
