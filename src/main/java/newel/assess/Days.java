package newel.assess;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** The days that a plot shows, from left to right. */
record Days(LocalDate from, LocalDate to) {

    /** Days of one and the same age. */
    record Stretch(LocalDate from, LocalDate to) {}

    double x(LocalDate day) {
        double share = (double) ChronoUnit.DAYS.between(from, day) / ChronoUnit.DAYS.between(from, to);
        return Plot.LEFT + share * (Plot.RIGHT - Plot.LEFT);
    }

    List<Stretch> stretches(LocalDate birth) {
        List<Stretch> stretches = new ArrayList<>();
        LocalDate start = from;
        for (int age = (int) ChronoUnit.YEARS.between(birth, from) + 1; start.isBefore(to); age++) {
            LocalDate birthday = birth.plusYears(age);
            LocalDate end = birthday.isBefore(to) ? birthday : to;
            stretches.add(new Stretch(start, end));
            start = end;
        }
        return stretches;
    }
}
