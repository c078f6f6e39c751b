/** The contact sheet: how the catalogue's pictures are reviewed. */
package newel.web.sheet;
