package newel.referral;

/** Who reads a note. */
public enum Addressee {
    OWN_DOCTOR("Own doctor", "your doctor"),
    PHYSIOTHERAPIST("Physiotherapist", "a physiotherapist"),
    FALLS_SERVICE("Falls service", "the falls clinic"),
    /** Calling comes first; the note goes along. */
    EMERGENCY_RECORD("Emergency service, as a record", "the ambulance crew");

    private final String words;
    private final String forClient;

    Addressee(String words, String forClient) {
        this.words = words;
        this.forClient = forClient;
    }

    public String words() {
        return words;
    }

    /** Within a sentence. */
    public String within() {
        return Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }

    /** As the client calls them, within a sentence. */
    public String forClient() {
        return forClient;
    }
}
