package newel.screen;

import java.util.ArrayList;
import java.util.List;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.FallsItem;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * Points of the twelve-item questionnaire on falls, 0 to 14.
 *
 * @param open points of the items without an answer
 * @param asked any item has an answer
 */
public record FallsScore(int points, int open, boolean asked) {
    public static final int MOST = 14;
    static final int AT_RISK_FROM = 4;
    static final Rule RULE =
            new Rule("FALLS-SCORE", "Rubenstein et al. 2011, J Safety Res 42:493-499; CDC STEADI", Known.SEEN);

    public static FallsScore of(Answers<FallsItem> answers) {
        int open = sum(answers, Answer.UNKNOWN);
        return new FallsScore(sum(answers, Answer.YES), open, open < MOST);
    }

    /** The first two items count 2, the other ten 1 each. */
    static int points(FallsItem item) {
        return item == FallsItem.FELL || item == FallsItem.AID ? 2 : 1;
    }

    private static int sum(Answers<FallsItem> answers, Answer answer) {
        return answers.all(FallsItem.class, answer).stream()
                .mapToInt(FallsScore::points)
                .sum();
    }

    /** Unknown as long as the open items could still reach the line. */
    public Answer atRisk() {
        if (points >= AT_RISK_FROM) {
            return Answer.YES;
        }
        return points + open >= AT_RISK_FROM ? Answer.UNKNOWN : Answer.NO;
    }

    public List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        if (asked && atRisk().yes()) {
            found.add(new Finding(RULE, "Falls questionnaire: " + points + " points; at risk is 4 or more."));
        } else if (asked && atRisk().unknown()) {
            found.add(new Finding(
                    RULE, "Falls questionnaire: " + points + " points so far; the open items could reach 4."));
        }
        return List.copyOf(found);
    }

    static List<Statement> stated() {
        return List.of(
                Area.state(
                        RULE,
                        Area.FALLS,
                        "Twelve items: the first two (fell; stick or frame) count 2, the others 1; at risk is 4 of 14 or more."));
    }
}
