package newel.web.form;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A date in three boxes: {@code field-day}, {@code field-month}, {@code field-year}. The month may be a name. */
public final class DateBoxes {
    private static final int SHORTEST_MONTH_NAME = 3;

    static boolean empty(Typed typed, String field) {
        return day(typed, field).isEmpty()
                && month(typed, field).isEmpty()
                && year(typed, field).isEmpty();
    }

    static Optional<LocalDate> read(Typed typed, String field) {
        try {
            int year = Integer.parseInt(year(typed, field));
            return year < 1000 || year > 9999
                    ? Optional.empty()
                    : Optional.of(
                            LocalDate.of(year, monthNumber(month(typed, field)), Integer.parseInt(day(typed, field))));
        } catch (NumberFormatException | DateTimeException notADate) {
            return Optional.empty();
        }
    }

    public static Typed fill(Typed typed, String field, LocalDate date) {
        return date == null
                ? typed
                : typed.with(field + "-day", String.valueOf(date.getDayOfMonth()))
                        .with(field + "-month", String.valueOf(date.getMonthValue()))
                        .with(field + "-year", String.valueOf(date.getYear()));
    }

    static String day(Typed typed, String field) {
        return typed.one(field + "-day");
    }

    static String month(Typed typed, String field) {
        return typed.one(field + "-month");
    }

    static String year(Typed typed, String field) {
        return typed.one(field + "-year");
    }

    private static int monthNumber(String text) {
        String name = text.toUpperCase(Locale.ROOT);
        return Arrays.stream(Month.values())
                .filter(month ->
                        name.length() >= SHORTEST_MONTH_NAME && month.name().startsWith(name))
                .findFirst()
                .map(Month::getValue)
                .orElseGet(() -> Integer.parseInt(text));
    }

    private DateBoxes() {}
}
