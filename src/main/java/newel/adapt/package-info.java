/**
 * Finds the nearest variant that fits. Among all states (a variant and the share of its way) of the same kind that ask no
 * more challenge than the wanted variant and keep every limit, the one that loses the least training value. Loss is defined
 * in {@link newel.adapt.Loss} alone. It is a distance: what is lost on the way to one state and from there to another is
 * never less than what is lost on the way straight there, so that adapting twice changes nothing.
 */
package newel.adapt;
