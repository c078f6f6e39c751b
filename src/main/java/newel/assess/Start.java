package newel.assess;

/** How hard to begin with what trains one purpose. */
public enum Start {
    /** The easy forms and the beginner's dose. */
    EASY("the easy forms"),
    /** Where anybody of this age would begin. */
    USUAL("the usual forms"),
    /** One step on. */
    FURTHER("one step further than usual");

    private final String words;

    Start(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
