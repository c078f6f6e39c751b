package newel.compose.exact;

/** Whether anything keeps all rules, whatever it is worth: a bound below 0 proves that nothing does. */
public final class Feasibility {
    private static final int PASSES = 120;
    private static final int[] WIDTHS = {256, 2_000, 16_000};

    public static Answer find(Problem problem, Budget budget) {
        return find(problem, budget, WIDTHS);
    }

    static Answer find(Problem problem, Budget budget, int[] widths) {
        Tables tables = Tables.of(problem, false);
        if (tables.hopeless()) {
            return new Answer.Impossible();
        }
        Incumbent incumbent = new Incumbent();
        Relaxation guide = new Ascent(tables, Multipliers.none(tables), budget, incumbent).tighten(PASSES);
        if (guide.bound < 0) {
            return new Answer.Impossible();
        }
        for (int width : widths) {
            if (incumbent.exists()) {
                return new Answer.Found(incumbent.items(), 0, 0);
            }
            long cutOff = new LabelSetting(tables, guide, incumbent, budget).search(width);
            if (!incumbent.exists() && cutOff == Tables.NEVER) {
                return new Answer.Impossible();
            }
            if (budget.spent()) {
                break;
            }
        }
        return incumbent.exists() ? new Answer.Found(incumbent.items(), 0, 0) : new Answer.Undecided();
    }

    private Feasibility() {}
}
