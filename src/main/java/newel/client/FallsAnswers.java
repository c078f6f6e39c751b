package newel.client;

/**
 * Falls in the past 12 months and the three key questions.
 *
 * @param fallsPastYear null when not known
 * @param injured a fall needed care
 * @param unableToRise lay on the floor for an hour or could not get up
 */
public record FallsAnswers(
        Integer fallsPastYear,
        Answer injured,
        Answer unableToRise,
        Answer lostConsciousness,
        Answer frail,
        Answer unsteady,
        Answer worried) {

    public static FallsAnswers notAsked() {
        return new FallsAnswers(
                null, Answer.UNKNOWN, Answer.UNKNOWN, Answer.UNKNOWN, Answer.UNKNOWN, Answer.UNKNOWN, Answer.UNKNOWN);
    }
}
