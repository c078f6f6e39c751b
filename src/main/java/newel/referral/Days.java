package newel.referral;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days as letters write them. */
final class Days {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    static String of(LocalDate day) {
        return DAY.format(day);
    }

    private Days() {}
}
