/** Who the practice is and what it has chosen. */
package newel.web.practice;
