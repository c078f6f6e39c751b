package newel.client;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * An exact decimal with its unit. Comparing is exact too: both sides are multiplied into the metric unit, never divided.
 *
 * <p>Two quantities are equal when number and unit are; the same length in two units compares as 0 and is not equal.
 */
public record Quantity(BigDecimal amount, Unit unit) implements Comparable<Quantity> {
    public Quantity {
        amount = plain(amount);
    }

    /** A double is taken as the shortest decimal that reads back as it: what was typed, up to 15 digits. */
    public static Quantity of(double amount, Unit unit) {
        return new Quantity(BigDecimal.valueOf(amount), unit);
    }

    @Override
    public int compareTo(Quantity other) {
        if (!unit.comparesWith(other.unit)) {
            throw new IllegalArgumentException(this + " does not compare with " + other);
        }
        return inBase().compareTo(other.inBase());
    }

    /** Rounded to 16 digits where the units do not divide evenly; for showing, not for judging. */
    public Quantity in(Unit other) {
        return other == unit ? this : new Quantity(inBase().divide(other.inBase(), MathContext.DECIMAL64), other);
    }

    public Quantity rounded(int decimals) {
        return new Quantity(amount.setScale(decimals, RoundingMode.HALF_UP), unit);
    }

    private BigDecimal inBase() {
        return amount.multiply(unit.inBase());
    }

    /** The number as a person writes it. */
    public String number() {
        return amount.toPlainString();
    }

    @Override
    public String toString() {
        return number() + " " + unit.words();
    }

    static BigDecimal plain(BigDecimal amount) {
        BigDecimal stripped = amount.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
