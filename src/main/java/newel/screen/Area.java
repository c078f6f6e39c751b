package newel.screen;

import newel.source.Rule;
import newel.source.Statement;

/** What a rule of screening is about. */
public enum Area {
    READINESS("Readiness to start"),
    RED_FLAGS("Signs that somebody else must look at"),
    AT_REST("Signs at rest"),
    SUGAR("Blood sugar"),
    TODAY("Fit for today"),
    STOP("Signs to stop"),
    FALLS("Falls"),
    EFFORT("Effort and pulse"),
    DOSE("How much in a week, and when to add load"),
    PAIN("Pain");

    private final String words;

    Area(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    static Statement state(Rule rule, Area area, String says) {
        return new Statement(rule, area.words, says);
    }
}
