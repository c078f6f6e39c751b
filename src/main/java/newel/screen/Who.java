package newel.screen;

/** Whose answer is waited for. */
public enum Who {
    CLIENT("the client's answers"),
    CLINICIAN("a doctor or another clinician");

    private final String words;

    Who(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
