package newel.limit;

import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Says in a few words what was logged, when and by whom. "You" is the instructor, who reads it. */
final class Whose {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private Whose() {}

    static String of(Limitation limitation) {
        return Called.within(limitation) + ", logged " + DAY.format(limitation.since()) + ", "
                + from(limitation.source());
    }

    private static String from(Limitation.Source source) {
        return switch (source) {
            case CLIENT -> "from the client";
            case INSTRUCTOR -> "from you";
            case CLINICIAN -> "ordered by a clinician";
        };
    }
}
