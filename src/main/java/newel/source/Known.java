package newel.source;

/** How well a figure or rule is known. */
public enum Known {
    SEEN("read in a published copy"),
    PARTLY("partly read, partly from memory"),
    FROM_MEMORY("from memory"),
    COMMON_PRACTICE("common practice"),
    DESIGN_CHOICE("design choice");

    private final String words;

    Known(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
