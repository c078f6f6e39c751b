package newel.limit;

import newel.body.Side;

/** Which side of the person something is about. */
public enum Sided {
    LEFT,
    RIGHT,
    BOTH;

    public boolean covers(Side side) {
        return this == BOTH || name().equals(side.name());
    }
}
