package newel.web.form;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The numbers that a field takes.
 *
 * @param what in a sentence: "the height"
 * @param unit as a person writes it: "cm"; empty for a plain count
 */
public record Span(String what, String unit, double least, double most, int decimals) {
    public static Span of(String what, String unit, double least, double most) {
        return new Span(what, unit, least, most, 1);
    }

    Span whole() {
        return new Span(what, unit, least, most, 0);
    }

    /** Takes spaces, the unit behind the number, and a comma for the point. */
    Optional<Double> read(String text) {
        String plain = text.replaceAll("\\s", "")
                .replace(',', '.')
                .replaceFirst("(?i)" + java.util.regex.Pattern.quote(unit) + "$", "");
        if (!plain.matches("[-+]?\\d{1,6}(\\.\\d{1,6})?")) {
            return Optional.empty();
        }
        double number = Double.parseDouble(plain);
        boolean fine = decimals > 0 || number == Math.rint(number);
        return fine && number >= least && number <= most ? Optional.of(number) : Optional.empty();
    }

    String ask() {
        return "Give " + what + (decimals == 0 ? " as a whole number" : "") + " from " + plain(least) + " to "
                + plain(most) + (unit.isEmpty() ? "" : " " + unit) + ".";
    }

    /** A number as a person would write it: no point where there is nothing behind it. */
    public static String plain(Number number) {
        return number == null
                ? ""
                : new BigDecimal(number.toString()).stripTrailingZeros().toPlainString();
    }
}
