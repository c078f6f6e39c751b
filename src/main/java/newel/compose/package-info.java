/**
 * Composes sessions and weeks: which movements, in which form and order, with which dose, so that minutes, body, home, goals
 * and guideline hold at once.
 *
 * <p><b>Two steps, each proved.</b> Balance and rounds are chosen and ordered at once, best of all that fit; then the
 * warm-up and cool-down for them. {@link newel.compose.exact} solves both. The proof is of each step for itself, for the
 * number of places that {@code Plan} reads off the minutes; it does not say that no other shape, or other rounds with other
 * ends, would score more together. In a week each day is proved for itself.
 *
 * <p><b>Rules.</b> {@code PlaceRule}: what may stand where. {@code Rule}: wishes and limits that have to hold and may clash;
 * of a clash the smallest set is named and the wish that costs least is given up, limits never. {@code Ranks}: the order in
 * warm-up, balance and cool-down, which also keeps the search from looking at the same session in every order.
 *
 * <p><b>Score.</b> {@code Term}, weighted by {@code weights.yaml}; how long things take is in {@code timing.yaml}, how much
 * effort they are in {@code activity.yaml}.
 *
 * <p>Seconds, in steps of five within a composed session. Points are whole.
 */
package newel.compose;
