package newel.assess;

/** On which side of a figure a cut-off lies; whether the figure itself counts is never left open. */
public enum Compare {
    LESS("under"),
    AT_MOST("at or under"),
    MORE("over"),
    AT_LEAST("at or over");

    private final String words;

    Compare(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** @param sign of value compared with figure */
    boolean holds(int sign) {
        return switch (this) {
            case LESS -> sign < 0;
            case AT_MOST -> sign <= 0;
            case MORE -> sign > 0;
            case AT_LEAST -> sign >= 0;
        };
    }

    /** Whether the worse values are the greater ones. */
    boolean above() {
        return this == MORE || this == AT_LEAST;
    }
}
