package newel.compose;

/** How an item came to be the variant it is. */
public enum How {
    KEPT,
    /** The same, but less of it. */
    SMALLER_DOSE,
    TRIMMED,
    REGRESSED,
    SUBSTITUTED,
    /** Put there by the instructor. */
    CHOSEN
}
