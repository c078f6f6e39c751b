package newel.catalogue;

/**
 * Sets of repetitions or of held or moving seconds: one of repetitions and seconds may be 0; both set means repetitions
 * held for that long.
 */
public record Dose(int sets, int repetitions, int seconds) {
    public boolean asksMoreThan(Dose other) {
        return sets > other.sets || repetitions > other.repetitions || seconds > other.seconds;
    }
}
