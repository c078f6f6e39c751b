/**
 * Puts movements in an order that fits the minutes. This first composer follows fixed rules in the shape that a beginners'
 * session has in practice (common practice): a warm-up, balance while fresh, two or three rounds of three or four movements
 * gone through twice, and a cool-down. What cannot be adapted to the person is named with its reasons. It does not search
 * for the best session and does not say that there is none better.
 */
package newel.compose;
