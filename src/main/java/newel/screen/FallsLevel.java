package newel.screen;

import java.util.Optional;

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
        return balanceWaitsFor().isPresent();
    }

    /** What balance work at home waits for, as a sentence; nothing when it does not wait. */
    public Optional<String> balanceWaitsFor() {
        return switch (this) {
            case LOW, INTERMEDIATE -> Optional.empty();
            case HIGH -> Optional.of("Balance work at home waits until falls have been assessed.");
            case NOT_KNOWN -> Optional.of("Balance work at home waits until the questions on falls are answered.");
        };
    }
}
