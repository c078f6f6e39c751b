/**
 * Movements, variants and the links between them, read from one YAML file a movement and checked whole.
 *
 * <p>A file writes what is true of the right side; the left mirrors it. In a pose what is not written is neutral; lengths are
 * statures, angles degrees, in the frame of `newel.body`. Seated and lying poses have their origin under the pelvis.
 *
 * <p>A link leads from a variant to an easier one. Whatever the easier one asks more of is said in the link's `rises`; that
 * sitting down bends hip and knee is said once, in `Rises`.
 *
 * <p>The content was drafted from published sources and common practice and has not been reviewed by a clinician. What poses
 * cannot show, such as the pull of a band or the force of a squeeze, is only in the effort number.
 */
package newel.catalogue;
