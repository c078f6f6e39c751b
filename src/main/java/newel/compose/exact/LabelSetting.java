package newel.compose.exact;

/** Goes through the slots layer by layer, keeping at most so many labels in each. */
final class LabelSetting {
    private final Tables tables;
    private final Relaxation guide;
    private final Incumbent incumbent;
    private final Budget budget;

    LabelSetting(Tables tables, Relaxation guide, Incumbent incumbent, Budget budget) {
        this.tables = tables;
        this.guide = guide;
        this.incumbent = incumbent;
        this.budget = budget;
    }

    /** @return the largest bound among the labels cut off: no solution that was not seen is worth more */
    long search(int width) {
        Labels labels = new Labels(tables, guide, width);
        Layer layer = labels.start();
        for (int s = 0; s < tables.slots(); s++) {
            layer = labels.next(layer, s, worthWhile(), budget);
            if (budget.spent()) {
                return guide.bound;
            }
        }
        offer(layer);
        return labels.cutOff();
    }

    private long worthWhile() {
        return tables.worth ? incumbent.value() : 0;
    }

    private void offer(Layer last) {
        for (int i = 0; i < last.size; i++) {
            if (last.value[i] >= incumbent.value()) {
                incumbent.offer(tables, last.path(i, tables.slots()), last.value[i]);
            }
        }
    }
}
