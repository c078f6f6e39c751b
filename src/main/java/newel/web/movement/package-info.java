/** The catalogue's pages: finding a movement, its stair, and each of its forms, for a chosen client or for nobody. */
package newel.web.movement;
