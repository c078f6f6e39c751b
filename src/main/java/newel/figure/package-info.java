/**
 * Turns posed bodies and what they use into plain drawing geometry: outlines, lines and arrows in points of a picture, no
 * markup. A picture is orthographic; X of the picture grows to the right, Y downward, {@link Camera#SCALE} points to one
 * stature. Tones are names of meanings (shirt, skin, wood …); colours belong to the style sheet.
 *
 * <p>Limits: parts are drawn whole from far to near by their middle's depth, so that two parts that pass through each
 * other are not cut.
 */
package newel.figure;
