package newel.referral;

import java.time.LocalDate;
import java.util.List;
import newel.screen.Urgency;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * Until when a note must have gone out, and until when its answer is waited for before somebody asks again. All of these
 * days are a design choice.
 */
public enum Due {
    EMERGENCY(0, 1),
    SAME_DAY(0, 1),
    ROUTINE(3, 14);

    private static final String OURS = "no published figure; ours";

    private final int daysToSend;
    private final int daysToAnswer;

    Due(int daysToSend, int daysToAnswer) {
        this.daysToSend = daysToSend;
        this.daysToAnswer = daysToAnswer;
    }

    public static Due of(Urgency urgency) {
        return switch (urgency) {
            case EMERGENCY -> EMERGENCY;
            case SAME_DAY -> SAME_DAY;
            case ROUTINE -> ROUTINE;
        };
    }

    public LocalDate toSend(LocalDate opened) {
        return opened.plusDays(daysToSend);
    }

    public LocalDate toAnswer(LocalDate sent) {
        return sent.plusDays(daysToAnswer);
    }

    public static List<Statement> statements() {
        return java.util.Arrays.stream(values()).map(Due::statement).toList();
    }

    private Statement statement() {
        Rule rule = new Rule("DUE-" + name().replace('_', '-'), OURS, Known.DESIGN_CHOICE);
        String send = daysToSend == 0 ? "on the day" : "within " + daysToSend + " days";
        String answer = daysToAnswer == 1 ? "1 day" : daysToAnswer + " days";
        return new Statement(
                rule,
                "Referral notes",
                "%s: the note goes out %s; without an answer after %s somebody asks again."
                        .formatted(urgencyWords(), send, answer));
    }

    private String urgencyWords() {
        return switch (this) {
            case EMERGENCY -> "Emergency";
            case SAME_DAY -> "Same day";
            case ROUTINE -> "Routine";
        };
    }
}
