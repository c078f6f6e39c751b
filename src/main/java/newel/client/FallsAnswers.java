package newel.client;

/**
 * Falls in the past 12 months and the three key questions.
 *
 * @param fallsPastYear null when not known
 * @param injured a fall needed care
 * @param unableToRise lay on the floor for an hour or could not get up
 * @param items the twelve items of the longer questionnaire
 */
public record FallsAnswers(
        Integer fallsPastYear,
        Answer injured,
        Answer unableToRise,
        Answer lostConsciousness,
        Answer frail,
        Answer unsteady,
        Answer worried,
        Answers<FallsItem> items) {

    public FallsAnswers {
        items = items == null ? Answers.notAsked() : items;
    }

    /** The longer questionnaire was not asked. */
    public FallsAnswers(
            Integer fallsPastYear,
            Answer injured,
            Answer unableToRise,
            Answer lostConsciousness,
            Answer frail,
            Answer unsteady,
            Answer worried) {
        this(fallsPastYear, injured, unableToRise, lostConsciousness, frail, unsteady, worried, Answers.notAsked());
    }

    public FallsAnswers withItems(Answers<FallsItem> answered) {
        return new FallsAnswers(
                fallsPastYear, injured, unableToRise, lostConsciousness, frail, unsteady, worried, answered);
    }

    public static FallsAnswers notAsked() {
        return new FallsAnswers(
                null, Answer.UNKNOWN, Answer.UNKNOWN, Answer.UNKNOWN, Answer.UNKNOWN, Answer.UNKNOWN, Answer.UNKNOWN);
    }
}
