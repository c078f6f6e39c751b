/** The check before a session: a few questions, what was measured, and whether the session goes on. */
package newel.web.today;
