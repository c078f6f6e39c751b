package newel.compose.exact;

/**
 * Tunes prices so that the bound falls: a subgradient method with deflected directions (half of the last direction is
 * kept) and a step by Polyak's rule towards a target a little below the best bound seen. When nothing falls for a while it
 * goes back to the best prices with half the distance. All constants were tuned on instances of their own.
 */
final class Ascent {
    private static final double KEPT_DIRECTION = 0.5;
    private static final double FIRST_DISTANCE_A_SLOT = 1.5 * Ties.POINT;
    private static final double LAST_DISTANCE = 0.02 * Ties.POINT;
    private static final int PATIENCE = 5;
    /** Seconds count in dozens where demands count in ones. */
    private static final double TIME_SCALE = 1.0 / 15;

    /** Keeps sums of prices far from the range of a long; 65 000 points, more than any price is worth. */
    private static final double HIGHEST = 1L << 30;
    /** A direction shorter than this has cancelled out. */
    private static final double SHORTEST = 1e-9;

    private final Tables tables;
    private final Budget budget;
    private final Incumbent incumbent;
    private final int demands;
    private final double[] at;
    private final double[] direction;
    private Relaxation best;

    Ascent(Tables tables, Multipliers start, Budget budget, Incumbent incumbent) {
        this.tables = tables;
        this.budget = budget;
        this.incumbent = incumbent;
        demands = start.demand().length;
        at = new double[demands + start.family().length + 1];
        direction = new double[at.length];
        set(start);
        best = pass(prices());
    }

    /** The tightest relaxation found within so many passes. */
    Relaxation tighten(int passes) {
        double distance = FIRST_DISTANCE_A_SLOT * tables.slots();
        Relaxation now = best;
        int idle = 0;
        for (int i = 0; i < passes && distance > LAST_DISTANCE && !done(); i++) {
            step(now, distance);
            now = pass(prices());
            if (now.bound < best.bound) {
                best = now;
                idle = 0;
            } else if (++idle >= PATIENCE) {
                distance /= 2;
                idle = 0;
                now = best;
                set(best.prices);
                java.util.Arrays.fill(direction, 0);
            }
        }
        return best;
    }

    private boolean done() {
        boolean settled = tables.worth ? best.bound <= incumbent.value() : best.bound < 0 || incumbent.exists();
        return settled || budget.spent();
    }

    private Relaxation pass(Multipliers prices) {
        Relaxation relaxation = new Relaxation(tables, prices);
        budget.cells(relaxation.cells());
        if (relaxation.connected()) {
            int[] path = relaxation.path();
            incumbent.offer(tables, path, Path.value(tables, path));
        }
        return relaxation;
    }

    private void step(Relaxation now, double distance) {
        double[] subgradient = new Subgradient(tables, now, TIME_SCALE).direction();
        double norm = 0;
        for (int i = 0; i < at.length; i++) {
            direction[i] = subgradient[i] + KEPT_DIRECTION * direction[i];
            norm += direction[i] * direction[i];
        }
        double target = Math.max(tables.worth ? incumbent.value() : Tables.NEVER, best.bound - distance);
        double length = norm < SHORTEST ? 0 : (now.bound - target) / norm;
        for (int i = 0; i < at.length; i++) {
            at[i] -= length * direction[i];
            at[i] = Math.clamp(at[i], i == at.length - 1 ? -HIGHEST : 0, HIGHEST);
        }
        if (!tables.worth) {
            normalise();
        }
    }

    /** When only feasibility counts, zero prices bound nothing, so their size is held. */
    private void normalise() {
        double sum = 0;
        for (double each : at) {
            sum += Math.abs(each);
        }
        double size = Ties.POINT * (double) tables.slots();
        for (int i = 0; i < at.length; i++) {
            at[i] = sum == 0 ? size / at.length : at[i] * size / sum;
        }
    }

    private void set(Multipliers prices) {
        for (int i = 0; i < at.length - 1; i++) {
            at[i] = i < demands ? prices.demand()[i] : prices.family()[i - demands];
        }
        at[at.length - 1] = prices.time() / TIME_SCALE;
        if (!tables.worth) {
            normalise();
        }
    }

    private Multipliers prices() {
        long[] demand = new long[demands];
        long[] family = new long[at.length - demands - 1];
        for (int d = 0; d < demand.length; d++) {
            demand[d] = (long) at[d];
        }
        for (int f : tables.shared.family) {
            family[f] = (long) at[demand.length + f];
        }
        return new Multipliers(demand, family, (long) (at[at.length - 1] * TIME_SCALE));
    }
}
