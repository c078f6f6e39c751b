package newel.handout;

import newel.limit.Share;

/** How far to go when it is not the whole way, in plain words. */
public final class RangeWords {
    private static final double SAME = 0.02;

    public static String of(Share share) {
        if (share.whole()) {
            return "";
        }
        if (Math.abs(share.left() - share.right()) < SAME) {
            return "Go only as far as the picture shows: " + part(share.left()) + " of the way.";
        }
        String side = share.left() < share.right() ? "left" : "right";
        return "On your " + side + " side go only " + part(share.least()) + " of the way.";
    }

    private static String part(double share) {
        if (share >= 0.85) {
            return "most";
        }
        return share >= 0.7 ? "three quarters" : share >= 0.58 ? "two thirds" : share >= 0.4 ? "half" : "a third";
    }

    private RangeWords() {}
}
