package newel.screen;

import static newel.source.Known.*;

import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** The words of the decision table, in ours. */
public enum Definition {
    REGULAR_EXERCISE(
            SEEN,
            "Used to exercise: planned exercise of moderate effort, 30 minutes or more on 3 days a week or more, for the last 3 months."),
    KNOWN_DISEASE(
            PARTLY,
            "Known disease: of the heart, of arteries in legs or brain; diabetes of type 1 or 2; of the kidneys."),
    NOT_BY_ITSELF(
            SEEN,
            "Not a reason by itself: lung disease, age, smoking, weight, blood fats, family, blood pressure under control."),
    LIGHT(SEEN, "Light: 30 to under 40 % of the pulse reserve, 9 to 11 on the scale from 6 to 20, 2 to 2.9 MET."),
    MODERATE(
            SEEN, "Moderate: 40 to under 60 % of the pulse reserve, 12 to 13 on the scale from 6 to 20, 3 to 5.9 MET."),
    VIGOROUS(SEEN, "Vigorous: 60 % of the pulse reserve or more, 14 or more on the scale from 6 to 20, 6 MET or more.");

    private final Known known;
    private final String words;

    Definition(Known known, String words) {
        this.known = known;
        this.words = words;
    }

    public String words() {
        return words;
    }

    Statement stated() {
        return Area.state(new Rule("DEF-" + name().replace('_', '-'), Row.CITATION, known), Area.READINESS, words);
    }
}
