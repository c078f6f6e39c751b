package newel.web.form;

/** Which lines a screen reader says after a field's name. */
public final class Described {
    /** Null, and so no attribute, when there are none. */
    public static String by(String name, String hint, String fault) {
        String hints = hint.isEmpty() ? "" : name + "-hint";
        String both = fault.isEmpty() ? hints : (hints + " " + name + "-fault").strip();
        return both.isEmpty() ? null : both;
    }

    private Described() {}
}
