package newel.web.pain;

import java.math.BigDecimal;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import newel.screen.PainLog;
import newel.screen.PainLogged;
import newel.screen.PainOutcome;
import newel.screen.Urgency;
import newel.web.form.Span;

/** What a log of pain says, in words. */
final class PainLines {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    static PainPage.Line of(PainLogged logged, String emergencyCall) {
        PainOutcome outcome = logged.outcome();
        return new PainPage.Line(
                logged.id(),
                logged.on().format(DAY),
                logged.where(),
                figures(logged.log()),
                tone(outcome),
                words(outcome, emergencyCall),
                outcome.finding(),
                logged.log().morning() == null && !(outcome instanceof PainOutcome.NotForThisModel),
                emergency(outcome));
    }

    private static boolean emergency(PainOutcome outcome) {
        return outcome instanceof PainOutcome.NotForThisModel not && not.urgency() == Urgency.EMERGENCY;
    }

    private static String figures(PainLog log) {
        return "During %s, after %s, next morning %s, usual morning %s"
                .formatted(plain(log.during()), plain(log.after()), plain(log.morning()), plain(log.usual()));
    }

    private static String plain(BigDecimal value) {
        return value == null ? "not told yet" : Span.plain(value);
    }

    private static String tone(PainOutcome outcome) {
        return switch (outcome) {
            case PainOutcome.Progress progress -> "well";
            case PainOutcome.Keep keep -> "well";
            case PainOutcome.AskNextMorning ask -> "care";
            case PainOutcome.Reduce reduce -> "care";
            case PainOutcome.StopAndRefer stop -> "stop";
            case PainOutcome.NotForThisModel not -> "stop";
        };
    }

    private static String words(PainOutcome outcome, String emergencyCall) {
        return switch (outcome) {
            case PainOutcome.Progress progress -> "May go up a step";
            case PainOutcome.Keep keep -> "Keep it as it is";
            case PainOutcome.AskNextMorning ask -> "Ask again the next morning";
            case PainOutcome.Reduce reduce -> "One step easier next time";
            case PainOutcome.StopAndRefer stop -> "Stop this movement and let a clinician look";
            case PainOutcome.NotForThisModel not ->
                not.urgency() == Urgency.EMERGENCY
                        ? "Emergency: " + emergencyCall + " now"
                        : "No exercise. " + not.urgency().words();
        };
    }

    private PainLines() {}
}
