package newel.screen;

/** How soon somebody else must look, most urgent first. */
public enum Urgency {
    EMERGENCY("Call the emergency number now"),
    SAME_DAY("A doctor or an urgent clinic today"),
    ROUTINE("An appointment within two weeks");

    private final String words;

    Urgency(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public Urgency higher(Urgency other) {
        return compareTo(other) <= 0 ? this : other;
    }
}
