package newel.screen;

/** How far a program may go today. */
public enum Permission {
    START,
    /** It may be made ready, but it is handed over only when the answer that it waits for is there. */
    PREPARE,
    NOTHING
}
