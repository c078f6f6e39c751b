/** What any form needs: what was typed, how it is read, what is wrong with it, and what a template asks. */
package newel.web.form;
