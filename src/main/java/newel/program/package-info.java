/**
 * Programs and their versions. A program is never edited in place: each change makes the next version, with its reason, and
 * every version stays readable. Changes are functions from one session to the next; nothing that does not fit comes in
 * without a written reason, which stays with the item.
 */
package newel.program;
