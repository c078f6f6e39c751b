package newel.source;

/**
 * A rule with what it says in words: what stands on the page of sources, and what a clinician signs off.
 *
 * @param subject what it is about, as a heading
 * @param says one or two whole sentences for the instructor, with figures and units
 */
public record Statement(Rule rule, String subject, String says) {

    /** All that a sign-off was given to. When any of it changes, the sign-off no longer counts. */
    public String signed() {
        return says + " | " + rule.citation() + " | " + rule.known().words();
    }
}
