/**
 * What was logged about a person, as limits that a machine can check, and whether a variant keeps them.
 *
 * <p>A limitation gives limits; the limits of all limitations and of the home combine to the tightest. A variant is judged
 * by what it asks over its whole path, on both sides when it is done on both; when only its reach is too great, through
 * less of its way. Angles are degrees, loads body weight times stature, lengths statures. Left and right are the person's.
 *
 * <p>It decides nothing medical: the presets restrict and say on what they rest; a clinician's word stands above them.
 */
package newel.limit;
