/** Every rule that Newel goes by, where it comes from, and who signed it off. */
package newel.web.source;
