package newel.screen;

/** Levels of the World Falls Guidelines 2022, and one for when the answers do not reach. */
public enum FallsLevel {
    LOW("Low"),
    INTERMEDIATE("Intermediate"),
    HIGH("High"),
    /** Not enough answers; handled as carefully as high until they are there (design choice). */
    NOT_KNOWN("Not known yet");

    private final String words;

    FallsLevel(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public boolean balanceWaits() {
        return this == HIGH || this == NOT_KNOWN;
    }
}
