package newel.compose.exact;

import java.util.ArrayList;
import java.util.List;

/** Drops the candidates that can be in no better solution than the one at hand, until hardly any more go. */
final class Fixing {
    /** Another round is worth it when at least this share went. */
    private static final double WORTH_IT = 0.02;

    private static final int PASSES = 12;

    private final Incumbent incumbent;
    private final Budget budget;
    private Relaxation guide;

    Fixing(Relaxation guide, Incumbent incumbent, Budget budget) {
        this.guide = guide;
        this.incumbent = incumbent;
        this.budget = budget;
    }

    /** The relaxation of what is left. */
    Relaxation fix() {
        int before = 0;
        do {
            before = guide.tables.candidates();
            Tables left = left();
            if (left.hopeless()) {
                return guide;
            }
            guide = new Ascent(left, guide.prices, budget, incumbent).tighten(PASSES);
        } while (guide.tables.candidates() < (1 - WORTH_IT) * before && !budget.spent());
        return guide;
    }

    private Tables left() {
        Tables tables = guide.tables;
        long[][] through = guide.through();
        List<List<Candidate>> kept = new ArrayList<>();
        for (int s = 0; s < tables.slots(); s++) {
            List<Candidate> slot = new ArrayList<>();
            for (int c = 0; c < through[s].length; c++) {
                if (through[s][c] >= incumbent.value()) {
                    slot.add(tables.columns[s].candidates[c]);
                }
            }
            kept.add(slot);
        }
        return new Tables(tables.problem, tables.families, kept, tables.worth);
    }
}
