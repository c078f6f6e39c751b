package newel.client;

/** One of the things that are timed within a test of several, or the length that was walked. */
public enum Part {
    SIDE_BY_SIDE("Feet side by side", "s"),
    SEMI_TANDEM("One foot half ahead", "s"),
    TANDEM("Heel to toe", "s"),
    ONE_LEG("On one leg", "s"),
    COURSE("Length of the walk", "m"),
    WALK("Time of the walk", "s"),
    STANDS("Time for five chair stands", "s");

    private final String words;
    private final String unit;

    Part(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    public String words() {
        return words;
    }

    public String unit() {
        return unit;
    }
}
