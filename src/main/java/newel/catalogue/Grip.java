package newel.catalogue;

/** How firmly the hands must close. */
public enum Grip {
    NONE,
    LIGHT,
    FIRM
}
