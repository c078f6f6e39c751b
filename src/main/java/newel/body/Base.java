package newel.body;

import java.util.ArrayList;
import java.util.List;

/**
 * The base of support seen from above (X forward, Z right): the hull of what stands on the ground. A seat counts with the
 * part that is sat on; a hand on a support is a force and not part of the base (limit of the model).
 */
public record Base(List<Vec> hull) {
    /** From the sit bones to the middle of the thigh, ahead of the hip centres (design choice). */
    private static final double SAT_BEHIND = 0.06;

    private static final double SAT_AHEAD = 0.12;
    private static final double SAT_HALF_WIDTH = 0.10;
    private static final double BED_REACH = 0.6;
    private static final Hull<Vec> SEEN_FROM_ABOVE = new Hull<>(Vec::x, Vec::z, 0);
