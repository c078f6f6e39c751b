package newel.compose.exact;

/** How the bound changes with each price: by how much the best path over-serves, over-uses or runs over. */
final class Subgradient {
    private final Tables tables;
    private final Relaxation now;
    private final double timeScale;

    Subgradient(Tables tables, Relaxation now, double timeScale) {
        this.tables = tables;
        this.now = now;
        this.timeScale = timeScale;
    }

    double[] direction() {
        int demands = now.prices.demand().length;
        double[] direction = new double[demands + now.prices.family().length + 1];
        for (int d = 0; d < demands; d++) {
            direction[d] = -Needs.of(tables.needs, d);
        }
        for (int f : tables.shared.family) {
            direction[demands + f] = 1;
        }
        int[] path = now.path();
        int seconds = 0;
        for (int s = 0; s < path.length; s++) {
            seconds += follow(s, path, direction, demands);
        }
        direction[direction.length - 1] = timeScale * overTime(seconds);
        return direction;
    }

    private int follow(int s, int[] path, double[] direction, int demands) {
        Column column = tables.columns[s];
        int c = path[s];
        for (long left = column.serving[c]; left != 0; left &= left - 1) {
            int d = Long.numberOfTrailingZeros(left) >>> 2;
            direction[d] += 1;
        }
        int family = column.family[c];
        if (family != Families.NONE && tables.shared.bit[family] >= 0) {
            direction[demands + family] -= 1;
        }
        int change = s == 0 ? 0 : tables.between[s][tables.columns[s - 1].state[path[s - 1]]][column.state[c]];
        return column.seconds[c] + change;
    }

    private double overTime(int seconds) {
        long price = now.prices.time();
        if (price > 0) {
            return seconds - tables.least;
        }
        if (price < 0) {
            return seconds - tables.most;
        }
        return Math.min(0, seconds - tables.least) + Math.max(0, seconds - tables.most);
    }
}
