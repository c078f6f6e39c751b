package newel.body;

/** Which part of a movement may be done through part of its way. */
public enum Part {
    NONE,
    /** Each arm by itself. */
    ARMS,
    /** Each leg by itself. */
    LEGS,
    /** Trunk and head; both sides together. */
    TRUNK,
    /** The whole pose; both sides together. */
    WHOLE
}
