package newel.compose;

/** Where on a movement's stair to begin looking, and how much of the dose. */
public enum Level {
    /** The reference variant and the beginner's dose. */
    BEGINNER,
    /** The reference variant, half way between the two doses. */
    PRACTISED,
    /** One step above the reference and the later dose. */
    REGULAR
}
