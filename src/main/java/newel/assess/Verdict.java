package newel.assess;

import newel.source.Rule;

/** What one table says about one result. */
public sealed interface Verdict {
    Table table();

    Says says();

    /** Worse than the table's figure. */
    boolean flagged();

    default Rule rule() {
        return table().rule();
    }

    enum Place {
        BELOW,
        WITHIN,
        ABOVE
    }

    /** Where in a range the result lies; above is better, whichever way the numbers run. */
    record Placed(Norm table, Row row, Place place) implements Verdict {
        @Override
        public Says says() {
            return switch (place) {
                case BELOW -> table.below();
                case WITHIN -> table.within();
                case ABOVE -> table.above();
            };
        }

        @Override
        public boolean flagged() {
            return place == Place.BELOW;
        }
    }

    record Judged(CutOff table, Row row, boolean flagged) implements Verdict {
        @Override
        public Says says() {
            return flagged ? table.flag() : table.clear();
        }
    }

    record Graded(Scale table, Says says) implements Verdict {
        @Override
        public boolean flagged() {
            return false;
        }
    }

    /** The table has no figure for this age and sex, and none is made up. */
    record NoNorm(Table table) implements Verdict {
        private static final Says NONE = new Says("NO_NORM", "no published figure for this age");

        @Override
        public Says says() {
            return NONE;
        }

        @Override
        public boolean flagged() {
            return false;
        }
    }
}
