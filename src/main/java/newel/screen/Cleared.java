package newel.screen;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import newel.client.ReadinessAnswers;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** A clinician's word that exercise may go on: it counts for twelve months, and only while nothing has changed. */
record Cleared(boolean given, LocalDate on, LocalDate today) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final int MONTHS = 12;
    private static final Rule RULE = new Rule("CLEARED-12-MONTHS", Row.CITATION, Known.PARTLY);

    static Cleared of(ReadinessAnswers answers, LocalDate today) {
        return new Cleared(answers.clearedWithinYear().yes(), answers.clearedOn(), today);
    }

    /** A clearance whose day was not written down is believed. */
    boolean counts() {
        return given && !lapsed();
    }

    boolean lapsed() {
        return given && on != null && on.plusMonths(MONTHS).isBefore(today);
    }

    Optional<Finding> lapse() {
        return lapsed()
                ? Optional.of(new Finding(RULE, "The clearance of " + DAY.format(on) + " is older than 12 months."))
                : Optional.empty();
    }

    static List<Statement> stated() {
        return List.of(Area.state(
                RULE,
                Area.READINESS,
                "A clearance counts for 12 months, while nothing has changed; then it is asked for again."));
    }
}
