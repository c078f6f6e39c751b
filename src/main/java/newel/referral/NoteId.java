package newel.referral;

public record NoteId(String value) {
    private static final int SHORT = 6;

    /** What a reader quotes: the end of the key, which is its random part. */
    public String reference() {
        return value.substring(Math.max(0, value.length() - SHORT)).toUpperCase(java.util.Locale.ROOT);
    }
}
