package newel.catalogue;

/** In what way the easier variant asks less. */
public enum Axis {
    POSITION,
    SUPPORT,
    RANGE,
    LEVER,
    LOAD,
    SPEED,
    STANCE,
    COORDINATION
}
