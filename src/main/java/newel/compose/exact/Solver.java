package newel.compose.exact;

/** Solves a problem: a tuned bound, a first solution, fixing, then label setting in growing width. */
public final class Solver {
    private static final int ROOT_PASSES = 120;
    private static final int MORE_PASSES = 500;
    private static final int FIRST_WIDTH = 64;
    private static final int[] WIDTHS = {500, 2_000, 8_000, 60_000};

    private final Problem problem;
    private final Budget budget;
    private final int firstWidth;
    private final int[] widths;
    private final Incumbent incumbent = new Incumbent();

    private Solver(Problem problem, Budget budget, int firstWidth, int[] widths) {
        this.problem = problem;
        this.budget = budget;
        this.firstWidth = firstWidth;
        this.widths = widths;
    }

    public static Answer solve(Problem problem, Budget budget) {
        return solve(problem, budget, FIRST_WIDTH, WIDTHS);
    }

    /** With widths of one's own, so that tests reach every stage on small problems. */
    static Answer solve(Problem problem, Budget budget, int firstWidth, int[] widths) {
        return new Solver(problem, budget, firstWidth, widths).answer();
    }

    private Answer answer() {
        Tables tables = Tables.of(problem, true);
        if (tables.hopeless()) {
            return new Answer.Impossible();
        }
        Relaxation guide = new Ascent(tables, Multipliers.none(tables), budget, incumbent).tighten(ROOT_PASSES);
        if (!guide.connected()) {
            return new Answer.Impossible();
        }
        long cutOff = new LabelSetting(tables, guide, incumbent, budget).search(firstWidth);
        if (cutOff < incumbent.value() || cutOff == Tables.NEVER) {
            return told(cutOff);
        }
        if (!incumbent.exists()) {
            switch (Feasibility.find(problem, budget)) {
                case Answer.Impossible impossible -> {
                    return impossible;
                }
                case Answer.Undecided undecided -> {
                    return undecided;
                }
                case Answer.Found found -> offer(tables, found);
            }
        }
        return told(improved(guide));
    }

    /** @return no solution that was not seen is worth more than this */
    private long improved(Relaxation root) {
        Relaxation guide = new Fixing(root, incumbent, budget).fix();
        long open = guide.bound;
        for (int width : widths) {
            long cutOff = new LabelSetting(guide.tables, guide, incumbent, budget).search(width);
            open = Math.min(open, cutOff);
            if (open < incumbent.value() || budget.spent()) {
                return open;
            }
            Relaxation tighter = new Ascent(guide.tables, guide.prices, budget, incumbent).tighten(MORE_PASSES);
            open = Math.min(open, tighter.bound);
            guide = new Fixing(tighter, incumbent, budget).fix();
        }
        return open;
    }

    private void offer(Tables tables, Answer.Found found) {
        int[] path = new int[tables.slots()];
        for (int s = 0; s < path.length; s++) {
            path[s] = java.util.List.of(tables.columns[s].candidates)
                    .indexOf(found.items().get(s));
        }
        incumbent.offer(tables, path, Path.value(tables, path));
    }

    private Answer told(long open) {
        if (!incumbent.exists()) {
            return open == Tables.NEVER ? new Answer.Impossible() : new Answer.Undecided();
        }
        int score = Ties.points(incumbent.value());
        return new Answer.Found(incumbent.items(), score, Ties.points(Math.max(incumbent.value(), open)));
    }
}
