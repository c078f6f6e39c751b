package newel.catalogue;

import java.util.Locale;

/** Demands as text, in the units of {@link Fall}. */
final class Measure {
    static String degrees(double angle) {
        return String.format(Locale.ROOT, "%.0f°", angle);
    }

    static String load(double moment) {
        return String.format(Locale.ROOT, "%.1f", 1000 * moment);
    }

    static String hundredths(double statures) {
        return String.format(Locale.ROOT, "%.1f", 100 * statures);
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private Measure() {}
}
