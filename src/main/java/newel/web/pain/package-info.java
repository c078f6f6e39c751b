/** Pain during, after and the morning after a session, and what it says about the next. */
package newel.web.pain;
