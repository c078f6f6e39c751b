package newel.compose.exact;

import java.util.List;

/** What is to be solved; see the package for the meaning. */
public record Problem(
        List<Slot> slots, Transitions transitions, List<Demand> demands, Window window, Endurance endurance) {
    /** Seconds come in steps of this. */
    public static final int GRID = 5;

    public static final int MOST_DEMANDS = 16;

    public Problem {
        slots = List.copyOf(slots);
        demands = List.copyOf(demands);
        if (slots.isEmpty() || demands.size() > MOST_DEMANDS) {
            throw new IllegalArgumentException(slots.size() + " slots, " + demands.size() + " demands");
        }
    }

    /** Bounds on the sum of all seconds. */
    public record Window(int least, int most) {}

    /** Longest runs, seconds. */
    public record Endurance(int standing, int armsUp) {
        /** Longer than any sequence. */
        public static final Endurance WITHOUT_LIMIT = new Endurance(1 << 20, 1 << 20);
    }

    public Problem withWindow(Window other) {
        return new Problem(slots, transitions, demands, other, endurance);
    }

    /** All seconds of a sequence, with those between neighbours. */
    public int seconds(List<Candidate> items) {
        int seconds = items.getFirst().seconds();
        for (int s = 1; s < items.size(); s++) {
            seconds += items.get(s).seconds()
                    + transitions.seconds(
                            s, items.get(s - 1).state(), items.get(s).state());
        }
        return seconds;
    }
}
