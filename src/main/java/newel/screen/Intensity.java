package newel.screen;

/**
 * How hard the work may be. The bounds are on the 0 to 10 effort scale: light 3 to 4, moderate 5 to 6, vigorous 7 to 8
 * (Nelson et al. 2007, Circulation 116:1094, from memory).
 */
public enum Intensity {
    LIGHT(4, "light"),
    LIGHT_TO_MODERATE(6, "light to moderate"),
    MODERATE(6, "moderate"),
    MODERATE_OR_VIGOROUS(8, "moderate or vigorous");

    private final int effortAtMost;
    private final String words;

    Intensity(int effortAtMost, String words) {
        this.effortAtMost = effortAtMost;
        this.words = words;
    }

    public int effortAtMost() {
        return effortAtMost;
    }

    public String words() {
        return words;
    }
}
