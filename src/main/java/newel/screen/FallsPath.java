package newel.screen;

import java.util.ArrayList;
import java.util.List;
import newel.client.Answer;
import newel.client.FallsAnswers;
import newel.client.Measured;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;

/**
 * The stratification path: a fall? how bad? how does the client walk?
 *
 * <p>Montero-Odasso M, van der Velde N, Martin FC et al. 2022, Age Ageing 51:afac205. Asked of everybody, not only from age
 * 65 (design choice).
 */
final class FallsPath {
    private static final String WFG = "Montero-Odasso et al. 2022, Age Ageing 51:afac205";
    private static final Rule FELL = new Rule("W1", WFG, Known.FROM_MEMORY);
    private static final Rule SEVERE = new Rule("W2", WFG, Known.PARTLY);
    private static final Rule GAIT = new Rule("W3", WFG, Known.PARTLY);
    private static final Rule KEY = new Rule("3KQ", "CDC STEADI three key questions", Known.SEEN);
    private static final Rule OPEN =
            new Rule("unanswered", "an unanswered question is never read as no", Known.DESIGN_CHOICE);

    /** Usual walking speed at or under this is impaired. */
    private static final double SLOW_METRES_A_SECOND = 0.8;

    /** Up-and-go over this is impaired, in this guideline only; others cut at 12, 13.5 and 20 seconds. */
    private static final double SLOW_UP_AND_GO_SECONDS = 15;

    private final FallsAnswers answers;
    private final Measured gaitSpeed;
    private final Measured upAndGo;

    FallsPath(FallsAnswers answers, Measured gaitSpeed, Measured upAndGo) {
        this.answers = answers;
        this.gaitSpeed = gaitSpeed;
        this.upAndGo = upAndGo;
    }

    FallsRisk walk() {
        Integer falls = answers.fallsPastYear();
        if (falls != null && falls == 0) {
            return risk(FallsLevel.LOW, List.of(new Finding(FELL, "No fall in the past 12 months.")));
        }
        List<Finding> severe = severe();
        if (!severe.isEmpty()) {
            return risk(FallsLevel.HIGH, severe);
        }
        List<Finding> open = open();
        return open.isEmpty() ? byGait() : risk(FallsLevel.NOT_KNOWN, open);
    }

    private FallsRisk risk(FallsLevel level, List<Finding> reasons) {
        return new FallsRisk(level, reasons, keyQuestions());
    }

    private List<Finding> severe() {
        List<Finding> found = new ArrayList<>();
        if (answers.fallsPastYear() != null && answers.fallsPastYear() >= 2) {
            found.add(new Finding(SEVERE, answers.fallsPastYear() + " falls in the past 12 months."));
        }
        addIf(found, answers.injured(), Answer.YES, SEVERE, "A fall that needed care.");
        addIf(found, answers.unableToRise(), Answer.YES, SEVERE, "Could not get up after a fall.");
        addIf(found, answers.lostConsciousness(), Answer.YES, SEVERE, "Lost consciousness, or may have.");
        addIf(found, answers.frail(), Answer.YES, SEVERE, "Frail, and has fallen.");
        return found;
    }

    private List<Finding> open() {
        List<Finding> found = new ArrayList<>();
        if (answers.fallsPastYear() == null) {
            found.add(new Finding(OPEN, "Not answered yet: falls in the past 12 months."));
        }
        addIf(found, answers.injured(), Answer.UNKNOWN, OPEN, "Not answered yet: whether a fall needed care.");
        addIf(found, answers.unableToRise(), Answer.UNKNOWN, OPEN, "Not answered yet: getting up after a fall.");
        addIf(found, answers.lostConsciousness(), Answer.UNKNOWN, OPEN, "Not answered yet: losing consciousness.");
        addIf(found, answers.frail(), Answer.UNKNOWN, OPEN, "Not answered yet: frailty.");
        return found;
    }

    private FallsRisk byGait() {
        if (gaitSpeed == null && upAndGo == null) {
            return risk(
                    FallsLevel.INTERMEDIATE,
                    List.of(new Finding(OPEN, "Has fallen, and neither walking speed nor up-and-go was measured.")));
        }
        boolean slow = gaitSpeed != null
                ? gaitSpeed.value() <= SLOW_METRES_A_SECOND
                : upAndGo.unable() || upAndGo.value() > SLOW_UP_AND_GO_SECONDS;
        Finding measured = new Finding(GAIT, gaitSpeed != null ? speedWords() : upAndGoWords());
        return risk(slow ? FallsLevel.INTERMEDIATE : FallsLevel.LOW, List.of(measured));
    }

    private String speedWords() {
        return gaitSpeed.unable()
                ? "Could not walk the measured way; impaired is 0.8 m/s or less."
                : "Walks at " + gaitSpeed.result().rounded(3) + "; impaired is 0.8 m/s or less.";
    }

    private String upAndGoWords() {
        return upAndGo.unable()
                ? "Could not do the up and go; impaired is over 15 s."
                : "Up and go in " + upAndGo.result() + "; impaired is over 15 s.";
    }

    private List<Finding> keyQuestions() {
        List<Finding> found = new ArrayList<>();
        Integer falls = answers.fallsPastYear();
        Answer fell = falls == null ? Answer.UNKNOWN : Answer.of(falls > 0);
        addKey(found, fell, "Has fallen in the past year.", "falls in the past year");
        addKey(found, answers.unsteady(), "Feels unsteady standing or walking.", "feeling unsteady");
        addKey(found, answers.worried(), "Worries about falling.", "worry about falling");
        found.addAll(contradictions());
        return List.copyOf(found);
    }

    /** The published path ends at no fall; answers that only a fall explains are shown beside it (design choice). */
    private List<Finding> contradictions() {
        List<Finding> found = new ArrayList<>();
        if (answers.fallsPastYear() != null && answers.fallsPastYear() == 0) {
            addIf(found, answers.injured(), Answer.YES, OPEN, "Says no fall, but also a fall that needed care.");
            addIf(found, answers.unableToRise(), Answer.YES, OPEN, "Says no fall, but could not get up after one.");
            addIf(found, answers.lostConsciousness(), Answer.YES, OPEN, "Says no fall, but lost consciousness.");
        }
        return found;
    }

    private static void addKey(List<Finding> found, Answer answer, String yes, String asked) {
        addIf(found, answer, Answer.YES, KEY, yes);
        addIf(found, answer, Answer.UNKNOWN, OPEN, "Not answered yet: " + asked + ".");
    }

    private static void addIf(List<Finding> found, Answer answer, Answer when, Rule rule, String text) {
        if (answer == when) {
            found.add(new Finding(rule, text));
        }
    }
}
