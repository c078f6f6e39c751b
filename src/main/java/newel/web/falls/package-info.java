/** Falls of one client: the level, what it asks next, and the longer questionnaire. */
package newel.web.falls;
