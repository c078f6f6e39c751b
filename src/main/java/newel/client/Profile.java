package newel.client;

import java.time.LocalDate;
import java.time.Period;

/**
 * Who the client is.
 *
 * @param sex used for norms only
 * @param massKg null when not known
 * @param phone null when not given
 * @param toCall whom to call when something is wrong, null when not given
 */
public record Profile(
        String name,
        LocalDate birthDate,
        Sex sex,
        int statureCm,
        Double massKg,
        TextSize textSize,
        String phone,
        Contact toCall) {

    /** Whole years on that day. */
    public int age(LocalDate day) {
        return Period.between(birthDate, day).getYears();
    }
}
