package newel.catalogue;

import java.util.Set;

/**
 * When to breathe out, which is at the effort: on some legs of the way from the first key pose (counted from 1) and on the
 * way back. Nothing at all means an even breath throughout.
 */
public record Breath(Set<Integer> outOnLegs, boolean outOnTheWayBack) {
    public static final Breath EVEN = new Breath(Set.of(), false);

    public boolean even() {
        return outOnLegs.isEmpty() && !outOnTheWayBack;
    }
}
