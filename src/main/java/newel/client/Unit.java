package newel.client;

import java.math.BigDecimal;

/** What a result is counted or measured in. Metric and US units of one kind are exact multiples of each other. */
public enum Unit {
    STANDS("stands", "1"),
    CURLS("curls", "1"),
    STEPS("steps", "1"),
    STAGES("stages", "1"),
    POINTS("points", "1"),
    SECONDS("s", "1"),
    METRES_PER_SECOND("m/s", "1"),
    CENTIMETRES("cm", "1"),
    INCHES("in", "2.54"),
    METRES("m", "1"),
    YARDS("yd", "0.9144"),
    KILOGRAMS("kg", "1"),
    POUNDS("lb", "0.45359237");

    private final String words;
    private final BigDecimal inBase;

    /** @param inBase one of it in the metric unit of its kind; the international yard and pound of 1959, exact */
    Unit(String words, String inBase) {
        this.words = words;
        this.inBase = new BigDecimal(inBase);
    }

    public String words() {
        return words;
    }

    BigDecimal inBase() {
        return inBase;
    }

    /** The unit of the same kind in the other system, or itself where both systems agree. */
    public Unit other() {
        return switch (this) {
            case CENTIMETRES -> INCHES;
            case INCHES -> CENTIMETRES;
            case METRES -> YARDS;
            case YARDS -> METRES;
            case KILOGRAMS -> POUNDS;
            case POUNDS -> KILOGRAMS;
            default -> this;
        };
    }

    public boolean comparesWith(Unit unit) {
        return this == unit || other() == unit;
    }
}
