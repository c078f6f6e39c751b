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
 */
public record FallsRisk(FallsLevel level, List<Finding> reasons, List<Finding> keyQuestions) {

    /**
     * @param gaitSpeed usual walking speed in m/s, or null
     * @param upAndGo seconds over 3 metres, or null; counts only where there is no walking speed
     */
    public static FallsRisk of(FallsAnswers answers, Measured gaitSpeed, Measured upAndGo) {
        return new FallsPath(answers, gaitSpeed, upAndGo).walk();
    }

    /** Any of the three key questions not answered with a clear no. */
    public boolean atRisk() {
        return !keyQuestions.isEmpty();
    }
}
