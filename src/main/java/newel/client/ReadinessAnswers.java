package newel.client;

/**
 * What was asked before starting.
 *
 * @param regularExercise planned exercise, 30 minutes at moderate effort on 3 days a week for the last 3 months
 * @param clearedWithinYear a clinician said within 12 months that exercise may go on, and nothing has changed since
 * @param symptomsCleared a clinician has looked at the very symptoms that are answered yes and said that exercise may go on
 * @param pulseLoweringMedicine such as a beta-blocker: no target pulse is shown then
 */
public record ReadinessAnswers(
        Answer regularExercise,
        Answers<Disease> knownDisease,
        Answers<Symptom> symptoms,
        Answers<RedFlag> redFlags,
        Answer wantsVigorous,
        Answer clearedWithinYear,
        Answer symptomsCleared,
        Answer pulseLoweringMedicine) {

    public static ReadinessAnswers notAsked() {
        return new ReadinessAnswers(
                Answer.UNKNOWN,
                Answers.notAsked(),
                Answers.notAsked(),
                Answers.notAsked(),
                Answer.UNKNOWN,
                Answer.UNKNOWN,
                Answer.UNKNOWN,
                Answer.UNKNOWN);
    }
}
