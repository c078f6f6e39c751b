package newel.compose.exact;

/** Judges a whole path, one candidate a slot, by every rule. */
final class Path {
    /** Its value in tie units, or NEVER when it breaks a rule. */
    static long value(Tables tables, int[] path) {
        long used = 0;
        long usedHigh = 0;
        long needs = tables.needs;
        int seconds = 0;
        long value = 0;
        int standing = 0;
        int armsUp = 0;
        for (int s = 0; s < path.length; s++) {
            Column column = tables.columns[s];
            int c = path[s];
            int family = column.family[c];
            if ((used & tables.shared.low(family)) != 0 || (usedHigh & tables.shared.high(family)) != 0) {
                return Tables.NEVER;
            }
            used |= tables.shared.low(family);
            usedHigh |= tables.shared.high(family);
            needs = Needs.after(needs, column.serving[c]);
            standing = Runs.standing(column, c, standing);
            armsUp = Runs.armsUp(column, c, armsUp);
            if (Runs.tooLong(tables.problem.endurance(), standing, armsUp)) {
                return Tables.NEVER;
            }
            value += column.value[c];
            seconds += column.seconds[c];
            if (s > 0) {
                int from = tables.columns[s - 1].state[path[s - 1]];
                value -= tables.penalty[s][from][column.state[c]];
                seconds += tables.between[s][from][column.state[c]];
            }
        }
        boolean kept = needs == 0 && seconds >= tables.least && seconds <= tables.most;
        return kept && value > Tables.NEVER / 2 ? value : Tables.NEVER;
    }

    private Path() {}
}
