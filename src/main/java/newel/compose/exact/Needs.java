package newel.compose.exact;

import java.util.List;

/** How often each of sixteen demands must still be served: four bits each, at most 7, so that the top bit is free. */
final class Needs {
    private static final long ONES = 0x1111_1111_1111_1111L;
    private static final long TOPS = 0x8888_8888_8888_8888L;
    private static final long SEVENS = 0x7777_7777_7777_7777L;
    private static final int WIDTH = 4;

    static long of(List<Demand> demands) {
        long needs = 0;
        for (int d = 0; d < demands.size(); d++) {
            needs |= (long) demands.get(d).least() << (WIDTH * d);
        }
        return needs;
    }

    /** One for each demand served; those that were not demanded count nothing. */
    static long serving(int serves) {
        long mask = 0;
        for (int d = 0; d < Problem.MOST_DEMANDS; d++) {
            mask |= (long) (serves >> d & 1) << (WIDTH * d);
        }
        return mask;
    }

    /** Never below zero: labels that have more than enough meet. */
    static long after(long needs, long serving) {
        long open = (needs + SEVENS & TOPS) >>> 3;
        return needs - (serving & open);
    }

    /** Whether some demand needs more than there can be. */
    static boolean beyond(long needs, long possible) {
        return ((possible | TOPS) - needs & TOPS) != TOPS;
    }

    /** What can be had here or later, at most 7 of each. */
    static long more(long possible, long serving) {
        long full = possible & possible >>> 1 & possible >>> 2 & ONES;
        return possible + (serving & ~full);
    }

    static int of(long needs, int demand) {
        return (int) (needs >>> (WIDTH * demand)) & 7;
    }

    private Needs() {}
}
