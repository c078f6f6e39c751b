package newel.compose;

/** How an item came to be the variant it is. */
public enum How {
    KEPT,
    TRIMMED,
    REGRESSED,
    SUBSTITUTED,
    /** Put there by the instructor. */
    CHOSEN
}
