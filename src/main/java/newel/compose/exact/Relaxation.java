package newel.compose.exact;

/** The longest path over (slot, state) under given prices: H of the package page, and the path itself. */
final class Relaxation {
    final Tables tables;
    final Multipliers prices;
    /** Best of all slots after s, coming from local state q. */
    final long[][] after;
    /** Bound on every solution's value. */
    final long bound;

    private final long[][] weight;
    /** Best candidate of each state of each slot. */
    private final int[][] best;

    private final long[][] bestWeight;
    /** Best next state of each state, and of the start. */
    private final int[][] next;

    private final long constants;
    private int first;

    Relaxation(Tables tables, Multipliers prices) {
        this.tables = tables;
        this.prices = prices;
        int slots = tables.slots();
        after = new long[slots][];
        weight = new long[slots][];
        best = new int[slots][];
        bestWeight = new long[slots][];
        next = new int[slots][];
        for (int s = slots - 1; s >= 0; s--) {
            Column column = tables.columns[s];
            candidatesFirst(s, column);
            after[s] = new long[column.states.length];
            next[s] = new int[column.states.length];
            if (s < slots - 1) {
                thenTransitions(s);
            }
        }
        constants = families() - prices.owed(tables.needs) + prices.window(tables, 0);
        bound = start() + constants;
    }

    private void candidatesFirst(int s, Column column) {
        weight[s] = new long[column.size()];
        best[s] = new int[column.states.length];
        bestWeight[s] = new long[column.states.length];
        java.util.Arrays.fill(bestWeight[s], Tables.NEVER);
        for (int c = 0; c < column.size(); c++) {
            long w = weight(column, c);
            weight[s][c] = w;
            if (w > bestWeight[s][column.state[c]]) {
                bestWeight[s][column.state[c]] = w;
                best[s][column.state[c]] = c;
            }
        }
    }

    private long weight(Column column, int c) {
        int family = column.family[c];
        long price = family == Families.NONE || tables.shared.bit[family] < 0 ? 0 : prices.family()[family];
        return column.value[c] + prices.served(column.serving[c]) - price + prices.time() * column.seconds[c];
    }

    private void thenTransitions(int s) {
        long[] reached = reached(s + 1);
        long[][] penalty = tables.penalty[s + 1];
        int[][] between = tables.between[s + 1];
        for (int p = 0; p < after[s].length; p++) {
            after[s][p] = Tables.NEVER;
            for (int q = 0; q < reached.length; q++) {
                long value = reached[q] - penalty[p][q] + prices.time() * between[p][q];
                if (value > after[s][p]) {
                    after[s][p] = value;
                    next[s][p] = q;
                }
            }
        }
    }

    private long[] reached(int s) {
        long[] reached = new long[after[s].length];
        for (int q = 0; q < reached.length; q++) {
            reached[q] = Math.max(Tables.NEVER, bestWeight[s][q] + after[s][q]);
        }
        return reached;
    }

    private long start() {
        long[] reached = reached(0);
        long most = Tables.NEVER;
        for (int q = 0; q < reached.length; q++) {
            if (reached[q] > most) {
                most = reached[q];
                first = q;
            }
        }
        return most;
    }

    private long families() {
        long sum = 0;
        for (int f : tables.shared.family) {
            sum += prices.family()[f];
        }
        return sum;
    }

    /** Whether there is any path at all. */
    boolean connected() {
        return start() > Tables.NEVER / 2;
    }

    /** The candidates on the best path, one a slot. */
    int[] path() {
        int[] path = new int[tables.slots()];
        int at = first;
        for (int s = 0; s < path.length; s++) {
            path[s] = best[s][at];
            at = next[s][at];
        }
        return path;
    }

    /** Upper bound on every solution that takes candidate c in slot s, for all of them. */
    long[][] through() {
        long[][] through = new long[tables.slots()][];
        long[] before = new long[tables.columns[0].states.length];
        for (int s = 0; s < through.length; s++) {
            Column column = tables.columns[s];
            through[s] = new long[column.size()];
            for (int c = 0; c < column.size(); c++) {
                int q = column.state[c];
                through[s][c] = before[q] + weight[s][c] + after[s][q] + constants;
            }
            before = s + 1 < through.length ? onward(s, before) : before;
        }
        return through;
    }

    private long[] onward(int s, long[] before) {
        long[] onward = new long[tables.columns[s + 1].states.length];
        java.util.Arrays.fill(onward, Tables.NEVER);
        for (int p = 0; p < before.length; p++) {
            long here = Math.max(Tables.NEVER, before[p] + bestWeight[s][p]);
            for (int q = 0; q < onward.length; q++) {
                long value = here - tables.penalty[s + 1][p][q] + prices.time() * tables.between[s + 1][p][q];
                onward[q] = Math.max(onward[q], value);
            }
        }
        return onward;
    }

    long cells() {
        long cells = tables.candidates();
        for (int s = 1; s < tables.slots(); s++) {
            cells += (long) tables.columns[s - 1].states.length * tables.columns[s].states.length;
        }
        return cells;
    }
}
