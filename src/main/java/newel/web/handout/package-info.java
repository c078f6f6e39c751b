/** The printable handout: for the instructor to look at, and under a link of its own for the client. */
package newel.web.handout;
