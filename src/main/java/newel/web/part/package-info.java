/** What several pages show alike. */
package newel.web.part;
