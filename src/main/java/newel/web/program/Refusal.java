package newel.web.program;

import newel.web.form.Typed;

/**
 * What stood against the last act on a program.
 *
 * @param why one sentence; empty when nothing did
 * @param movement the item whose dose was refused; empty when it was about something else
 * @param field the field of the dose that is named
 * @param typed the dose as it was typed
 */
record Refusal(String why, String movement, String field, Typed typed) {
    static final Refusal NONE = of("");

    static Refusal of(String why) {
        return new Refusal(why, "", "", Typed.NOTHING);
    }

    /** An id on the page to go to, empty for none. */
    String at() {
        return movement.isEmpty() ? "" : "dose-" + movement + "-" + field;
    }
}
