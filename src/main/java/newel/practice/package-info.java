/**
 * The practice: who it is and how it is reached, which of the published sets of rules it works by, and which rules a
 * clinician has signed off for it by name.
 *
 * <p>A sign-off holds for the very words that were signed. A rule that says something else today needs a new one.
 */
package newel.practice;
