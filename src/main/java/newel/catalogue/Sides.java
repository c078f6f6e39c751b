package newel.catalogue;

/** How the two sides share the work. */
public enum Sides {
    /** Both at once. */
    TOGETHER,
    /** Right, left, right, left within one set; the dose counts both. */
    ALTERNATING,
    /** All on one side, then all on the other; the dose is for each side. */
    EACH
}
