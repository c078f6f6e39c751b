package newel.compose.exact;

/** Makes a layer of labels out of the layer before it. */
final class Labels {
    /** A layer in the making may grow to so many widths before it is cut. */
    private static final int ROOM = 4;

    private final Tables tables;
    private final Relaxation guide;
    private final boolean limitedStanding;
    private final boolean limitedArms;
    private final int width;
    private long cutOff = Tables.NEVER;
    private final Label child = new Label();
    /** Sum of the prices of all families that occur after slot s. */
    private final long[] laterPrices;

    private final long[][] bytePrice;

    Labels(Tables tables, Relaxation guide, int width) {
        this.width = width;
        this.tables = tables;
        this.guide = guide;
        Problem.Endurance most = tables.problem.endurance();
        limitedStanding = most.standing() < Problem.Endurance.WITHOUT_LIMIT.standing();
        limitedArms = most.armsUp() < Problem.Endurance.WITHOUT_LIMIT.armsUp();
        long[] bitPrice = new long[tables.shared.count()];
        java.util.Arrays.setAll(bitPrice, b -> guide.prices.family()[tables.shared.family[b]]);
        bytePrice = bytePrices(bitPrice);
        laterPrices = new long[tables.slots()];
        for (int s = 0; s < laterPrices.length; s++) {
            laterPrices[s] = priced(tables.shared.laterLow[s], tables.shared.laterHigh[s]);
        }
    }

    /** Before the first slot: one label, nothing chosen. */
    Layer start() {
        Layer layer = new Layer(null);
        child.needs = tables.needs;
        child.bound = guide.bound;
        layer.add(child);
        return layer;
    }

    /** @param worthWhile labels with a lower bound are not kept */
    Layer next(Layer before, int s, long worthWhile, Budget budget) {
        Layer layer = new Layer(before);
        for (int i = 0; i < before.size && !budget.spent(); i++) {
            extend(before, i, s, layer, worthWhile);
            budget.labels(tables.columns[s].size() / 4 + 1);
            cut(layer, ROOM * width);
        }
        cut(layer, width);
        layer.close();
        return layer;
    }

    private void cut(Layer layer, int most) {
        if (layer.size > most) {
            cutOff = Math.max(cutOff, layer.cut(width));
        }
    }

    /** The largest bound among all labels cut off so far. */
    long cutOff() {
        return cutOff;
    }

    private void extend(Layer before, int i, int s, Layer into, long worthWhile) {
        Column column = tables.columns[s];
        for (int c = 0; c < column.size(); c++) {
            int family = column.family[c];
            long low = tables.shared.low(family);
            long high = tables.shared.high(family);
            boolean taken = (before.low[i] & low | before.high[i] & high) != 0;
            if (!taken && reach(before, i, s, column, c)) {
                child.parent = i;
                child.candidate = c;
                child.low = (before.low[i] | low) & tables.shared.laterLow[s];
                child.high = (before.high[i] | high) & tables.shared.laterHigh[s];
                child.bound = Math.min(before.bound[i], bound(s, column.state[c]));
                if (child.bound >= worthWhile) {
                    into.add(child);
                }
            }
        }
    }

    /** Fills in value, needs and place, or says that no solution goes on from there. */
    private boolean reach(Layer before, int i, int s, Column column, int c) {
        long from = before.place[i];
        int to = column.state[c];
        int gone = Label.gone(from) + column.seconds[c];
        child.value = before.value[i] + column.value[c];
        if (s > 0) {
            gone += tables.between[s][Label.state(from)][to];
            child.value -= tables.penalty[s][Label.state(from)][to];
        }
        child.needs = Needs.after(before.needs[i], column.serving[c]);
        boolean inTime =
                gone + tables.leastAfter[s][to] <= tables.most && gone + tables.mostAfter[s][to] >= tables.least;
        return inTime
                && child.value > Tables.NEVER / 2
                && !Needs.beyond(child.needs, tables.possible[s + 1])
                && endures(from, s, column, c, gone);
    }

    private boolean endures(long from, int s, Column column, int c, int gone) {
        int standing = limitedStanding ? Runs.standing(column, c, Label.standing(from)) : 0;
        int armsUp = limitedArms ? Runs.armsUp(column, c, Label.armsUp(from)) : 0;
        if (Runs.tooLong(tables.problem.endurance(), standing, armsUp)) {
            return false;
        }
        boolean goOn = s + 1 < tables.slots() && !tables.columns[s + 1].fresh;
        child.place = Label.place(column.state[c], gone, goOn ? standing : 0, goOn ? armsUp : 0);
        return true;
    }

    private long bound(int s, int state) {
        long families = laterPrices[s] - priced(child.low, child.high);
        return child.value
                + guide.after[s][state]
                + families
                - guide.prices.owed(child.needs)
                + guide.prices.window(tables, Label.gone(child.place));
    }

    private long priced(long low, long high) {
        long sum = 0;
        for (int b = 0; low >>> b != 0 && b < Long.SIZE; b += Byte.SIZE) {
            sum += bytePrice[b >>> 3][(int) (low >>> b) & 0xff];
        }
        for (int b = 0; high >>> b != 0 && b < Long.SIZE; b += Byte.SIZE) {
            sum += bytePrice[8 + (b >>> 3)][(int) (high >>> b) & 0xff];
        }
        return sum;
    }

    /** Sums of the prices of any eight neighbouring bits, looked up instead of added millions of times. */
    private static long[][] bytePrices(long[] bitPrice) {
        long[][] sums = new long[16][256];
        for (int bit = 0; bit < bitPrice.length; bit++) {
            for (int set = 0; set < 256; set++) {
                sums[bit >>> 3][set] += (set >>> (bit & 7) & 1) * bitPrice[bit];
            }
        }
        return sums;
    }
}
