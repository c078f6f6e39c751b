/**
 * Where a figure or a rule comes from and how well it is known, and what a rule found in one person.
 *
 * <p>Every threshold that can change what a person is given carries such a rule, so that a page can show it beside the
 * result and a practice can sign it off.
 */
package newel.source;
