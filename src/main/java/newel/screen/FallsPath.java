package newel.screen;

import java.util.ArrayList;
import java.util.List;
import newel.client.Answer;
import newel.client.FallsAnswers;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * The stratification path: a fall? how bad? how does the client walk?
 *
 * <p>Montero-Odasso M, van der Velde N, Martin FC et al. 2022, Age Ageing 51:afac205. Asked of everybody, not only from age
 * 65 (design choice).
 */
final class FallsPath {
    static final String WFG = "Montero-Odasso et al. 2022, Age Ageing 51:afac205";
    private static final Rule FELL = new Rule("W1", WFG, Known.FROM_MEMORY);
    private static final Rule SEVERE = new Rule("W2", WFG, Known.PARTLY);
    private static final Rule KEY = new Rule("3KQ", "CDC STEADI three key questions", Known.SEEN);
    static final Rule OPEN = new Rule("FALLS-OPEN", "an unanswered question is never read as no", Known.DESIGN_CHOICE);

    private final FallsAnswers answers;
    private final FallsGait gait;

    FallsPath(FallsAnswers answers, FallsGait gait) {
        this.answers = answers;
        this.gait = gait;
    }

    FallsRisk walk() {
        Integer falls = answers.fallsPastYear();
        if (falls != null && falls == 0) {
            return noFall();
        }
        List<Finding> severe = severe();
        if (!severe.isEmpty()) {
            return risk(FallsLevel.HIGH, severe);
        }
        List<Finding> open = open();
        return open.isEmpty() ? byGait() : risk(FallsLevel.NOT_KNOWN, open);
    }

    /** As published the path ends here; the variant looks at the walk of everybody. */
    private FallsRisk noFall() {
        return gait.askedOfEverybody()
                ? byGait()
                : risk(FallsLevel.LOW, List.of(new Finding(FELL, "No fall in the past 12 months.")));
    }

    private FallsRisk risk(FallsLevel level, List<Finding> reasons) {
        return new FallsRisk(level, reasons, keyQuestions(), FallsScore.of(answers.items()));
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
        return risk(gait.slow() ? FallsLevel.INTERMEDIATE : FallsLevel.LOW, gait.findings());
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

    static List<Statement> stated() {
        Area area = Area.FALLS;
        return List.of(
                Area.state(FELL, area, "Once a year: any fall in the past 12 months? No fall: low (as published)."),
                Area.state(
                        SEVERE,
                        area,
                        "A fall and any of: care was needed; 2 or more falls; frail; lay an hour or could not rise;"
                                + " lost consciousness: high."),
                Area.state(KEY, area, "Fallen in a year, unsteady, or worried about falling: any yes is at risk."),
                Area.state(OPEN, area, "What was not answered or measured is never taken as good."));
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
