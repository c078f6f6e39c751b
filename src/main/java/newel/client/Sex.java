package newel.client;

/** Which published norms apply; nothing else depends on it. */
public enum Sex {
    FEMALE,
    MALE
}
