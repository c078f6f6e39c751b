package newel.compose.exact;

/** What it costs to come from one state to the next. */
public interface Transitions {
    /** A penalty that rules a pair of neighbours out. */
    int FORBIDDEN = 1 << 20;

    Transitions FREE = new Transitions() {
        @Override
        public int penalty(int slot, int from, int to) {
            return 0;
        }

        @Override
        public int seconds(int slot, int from, int to) {
            return 0;
        }
    };

    /** Points lost on entering a slot (1 or later) in a state, coming from the state of the slot before. */
    int penalty(int slot, int from, int to);

    /** Seconds that it takes, a multiple of the grid. */
    int seconds(int slot, int from, int to);
}
