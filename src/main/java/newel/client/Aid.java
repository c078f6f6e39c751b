package newel.client;

/** What was held on to while walking. */
public enum Aid {
    NONE("no walking aid"),
    STICK("walking stick"),
    FRAME("walking frame"),
    OTHER("another walking aid");

    private final String words;

    Aid(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
