package newel.compose;

/** The parts of a session. */
public enum BlockKind {
    WARM_UP("Warm-up"),
    BALANCE("Balance"),
    ROUND("Round"),
    COOL_DOWN("Cool-down");

    private final String words;

    BlockKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
