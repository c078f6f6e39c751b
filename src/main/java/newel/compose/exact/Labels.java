package newel.compose.exact;

/** Makes a layer of labels out of the layer before it. */
final class Labels {
    private final Tables tables;
    private final Relaxation guide;
    private final boolean limitedStanding;
    private final boolean limitedArms;
    private final Label child = new Label();
    /** Sum of the prices of all families that occur after slot s. */
    private final long[] laterPrices;

    private final long[] bitPrice;

    Labels(Tables tables, Relaxation guide) {
        this.tables = tables;
        this.guide = guide;
        Problem.Endurance most = tables.problem.endurance();
        limitedStanding = most.standing() < Problem.Endurance.WITHOUT_LIMIT.standing();
        limitedArms = most.armsUp() < Problem.Endurance.WITHOUT_LIMIT.armsUp();
        bitPrice = new long[tables.shared.count()];
        java.util.Arrays.setAll(bitPrice, b -> guide.prices.family()[tables.shared.family[b]]);
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
        }
        layer.close();
        return layer;
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
        for (long left = low; left != 0; left &= left - 1) {
            sum += bitPrice[Long.numberOfTrailingZeros(left)];
        }
        for (long left = high; left != 0; left &= left - 1) {
            sum += bitPrice[64 + Long.numberOfTrailingZeros(left)];
        }
        return sum;
    }
}
