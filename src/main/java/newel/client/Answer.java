package newel.client;

/** An answer to a question about health or home. */
public enum Answer {
    YES,
    NO,
    UNKNOWN;

    public static Answer of(boolean yes) {
        return yes ? YES : NO;
    }

    public boolean yes() {
        return this == YES;
    }

    public boolean no() {
        return this == NO;
    }

    public boolean unknown() {
        return this == UNKNOWN;
    }

    /** When in doubt, the careful reading: everything but a clear no. */
    public boolean yesOrUnknown() {
        return this != NO;
    }
}
