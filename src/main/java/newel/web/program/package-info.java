/** A client's program: drafting it, reading its versions, changing it, and what a new limitation changes in it. */
package newel.web.program;
