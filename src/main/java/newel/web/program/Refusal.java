package newel.web.program;

import newel.web.form.Typed;

/**
 * What stood against the last act on a program.
 *
 * @param why one sentence; empty when nothing did
 * @param about the item whose dose was refused, or {@link #BRIEF}; empty when it was about something else
 * @param field the field that is named
 * @param typed the fields as they were typed
 */
record Refusal(String why, String about, String field, Typed typed) {
    /** About what composing is asked for. */
    static final String BRIEF = "brief";

    static final Refusal NONE = of("");

    static Refusal of(String why) {
        return new Refusal(why, "", "", Typed.NOTHING);
    }

    boolean about(String what) {
        return about.equals(what);
    }

    /** An id on the page to go to, empty for none. */
    String at() {
        if (about.isEmpty()) {
            return "";
        }
        return about(BRIEF) ? "brief-" + field : "dose-" + about + "-" + field;
    }
}
