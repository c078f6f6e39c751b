package newel.client;

import java.time.LocalDate;

/**
 * What was asked before starting.
 *
 * @param regularExercise planned exercise, 30 minutes at moderate effort on 3 days a week for the last 3 months
 * @param clearedWithinYear a clinician said within 12 months that exercise may go on, and nothing has changed since
 * @param symptomsCleared a clinician has looked at the very symptoms that are answered yes and said that exercise may go on
 * @param pulseLoweringMedicine such as a beta-blocker: no target pulse is shown then
 * @param pulseGuards what else makes a target pulse mislead
 * @param lowSugarMedicine takes insulin, or tablets that can make the blood sugar too low
 * @param clearedOn the day of the clearance, null when it was not written down
 */
public record ReadinessAnswers(
        Answer regularExercise,
        Answers<Disease> knownDisease,
        Answers<Symptom> symptoms,
        Answers<RedFlag> redFlags,
        Answer wantsVigorous,
        Answer clearedWithinYear,
        Answer symptomsCleared,
        Answer pulseLoweringMedicine,
        Answers<PulseGuard> pulseGuards,
        Answer lowSugarMedicine,
        LocalDate clearedOn) {

    public ReadinessAnswers {
        pulseGuards = pulseGuards == null ? Answers.notAsked() : pulseGuards;
        lowSugarMedicine = lowSugarMedicine == null ? Answer.UNKNOWN : lowSugarMedicine;
    }

    /** Guards of the pulse and medicine for the sugar were not asked, and the day of a clearance is not known. */
    public ReadinessAnswers(
            Answer regularExercise,
            Answers<Disease> knownDisease,
            Answers<Symptom> symptoms,
            Answers<RedFlag> redFlags,
            Answer wantsVigorous,
            Answer clearedWithinYear,
            Answer symptomsCleared,
            Answer pulseLoweringMedicine) {
        this(
                regularExercise,
                knownDisease,
                symptoms,
                redFlags,
                wantsVigorous,
                clearedWithinYear,
                symptomsCleared,
                pulseLoweringMedicine,
                Answers.notAsked(),
                Answer.UNKNOWN,
                null);
    }

    public ReadinessAnswers withRedFlags(Answers<RedFlag> flags) {
        return new ReadinessAnswers(
                regularExercise,
                knownDisease,
                symptoms,
                flags,
                wantsVigorous,
                clearedWithinYear,
                symptomsCleared,
                pulseLoweringMedicine,
                pulseGuards,
                lowSugarMedicine,
                clearedOn);
    }

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
