package newel.screen;

import java.util.List;
import newel.client.FallsAnswers;
import newel.client.Measured;
import newel.source.Finding;

/**
 * Risk of falls.
 *
 * @param level by the path of the World Falls Guidelines as published, which ends at low when there was no fall
 * @param keyQuestions yes, or no answer, to the three key questions; more sensitive than the level
 * @param score of the longer questionnaire, which may not have been asked
 */
public record FallsRisk(FallsLevel level, List<Finding> reasons, List<Finding> keyQuestions, FallsScore score) {

    /** The longer questionnaire was not asked. */
    public FallsRisk(FallsLevel level, List<Finding> reasons, List<Finding> keyQuestions) {
        this(level, reasons, keyQuestions, new FallsScore(0, FallsScore.MOST, false));
    }

    /**
     * @param gaitSpeed usual walking speed in m/s, or null
     * @param upAndGo seconds over 3 metres, or null; as published it counts only where there is no walking speed
     */
    public static FallsRisk of(FallsAnswers answers, Measured gaitSpeed, Measured upAndGo, FallsSet set) {
        return new FallsPath(answers, new FallsGait(gaitSpeed, upAndGo, set)).walk();
    }

    /** Any of the three key questions not answered with a clear no, or the longer questionnaire not clearly under its line. */
    public boolean atRisk() {
        return !keyQuestions.isEmpty() || !score.findings().isEmpty();
    }
}
