package newel.compose.exact;

/**
 * Prices in tie units: of each demand, of each family (by its number in the problem), and of a grid second.
 *
 * @param time positive when the least time binds, negative when the most does
 */
record Multipliers(long[] demand, long[] family, long time) {
    static Multipliers none(Tables tables) {
        return new Multipliers(new long[tables.problem.demands().size()], new long[tables.families.count()], 0);
    }

    /** The sum of the prices of demands served. */
    long served(long serving) {
        long sum = 0;
        for (long left = serving; left != 0; left &= left - 1) {
            sum += demand[Long.numberOfTrailingZeros(left) >>> 2];
        }
        return sum;
    }

    /** Of what the demands' prices promised, the part that is still to be served. */
    long owed(long needs) {
        long sum = 0;
        for (long left = needs; left != 0; ) {
            int d = Long.numberOfTrailingZeros(left) >>> 2;
            int open = Needs.of(needs, d);
            sum += demand[d] * open;
            left &= -16L << (d << 2);
        }
        return sum;
    }

    /** What the window costs once so many grid seconds are gone. */
    long window(Tables tables, int gone) {
        return time > 0 ? -time * Math.max(0, tables.least - gone) : -time * (tables.most - gone);
    }
}
