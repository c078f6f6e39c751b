package newel.client;

/** How used the client is to exercise. */
public enum Experience {
    NEW,
    SOME,
    REGULAR
}
