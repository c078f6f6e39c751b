package newel.compose;

import java.util.ArrayList;
import java.util.List;
import newel.compose.exact.Problem.Window;

/**
 * The places of a session. How many parts and places there are is read off the minutes and off how long the movements that
 * serve best take (rounds of three or four gone through twice, balance while fresh, ends that grow with the whole: common
 * practice; the figures are design choices). The last place of a part may stay empty, so that small differences in time do
 * not decide.
 */
final class Plan {
    private static final int PER_ROUND = 4;
    private static final int LEAST_PER_ROUND = 3;

    private final int minutes;
    private final Typical typical;
    private final int rest;

    Plan(int minutes, Typical typical) {
        this.minutes = minutes;
        this.typical = typical;
        this.rest = Costs.SHIPPED.rest(minutes);
    }

    /** Balance and rounds. */
    List<Place> middle() {
        List<Place> places = new ArrayList<>();
        int balance = balance();
        for (int i = 0; i < balance; i++) {
            places.add(place(BlockKind.BALANCE, 0, i, balance, Timing.BETWEEN_PARTS));
        }
        Rounds rounds = rounds(balance);
        for (int r = 0; r < rounds.count(); r++) {
            for (int i = 0; i < rounds.each(); i++) {
                places.add(round(rounds, r, i));
            }
        }
        return places;
    }

    private int balance() {
        return (int) Math.min(minutes < 25 ? 1 : minutes < 45 ? 2 : 3, typical.movements(BlockKind.BALANCE));
    }

    private static Place place(BlockKind kind, int block, int index, int least, int breakBefore) {
        return new Place(kind, block, index, least, false, 1, 0, 0, breakBefore);
    }

    private Place round(Rounds rounds, int round, int index) {
        return new Place(
                BlockKind.ROUND,
                Place.FIRST_ROUND + round,
                index,
                Math.min(rounds.each(), LEAST_PER_ROUND),
                false,
                passes(),
                rest,
                rounds.count() - 1 - round,
                round == 0 ? Timing.BETWEEN_PARTS : Timing.WATER_BREAK);
    }

    private record Rounds(int count, int each) {}

    /** As many as come nearest to the middle of the window, with as many movements as there are. */
    private Rounds rounds(int balance) {
        long movements = typical.movements(BlockKind.ROUND);
        if (movements < LEAST_PER_ROUND) {
            return new Rounds(movements == 0 ? 0 : 1, (int) movements);
        }
        Rounds best = null;
        for (int count = leastRounds(); count <= mostRounds() && (long) count * LEAST_PER_ROUND <= movements; count++) {
            for (int each = LEAST_PER_ROUND; each <= PER_ROUND && (long) count * each <= movements; each++) {
                Rounds tried = new Rounds(count, each);
                best = best == null || off(tried, balance) < off(best, balance) ? tried : best;
            }
        }
        return best == null ? new Rounds(1, LEAST_PER_ROUND) : best;
    }

    private int off(Rounds rounds, int balance) {
        int seconds = balance * typical.seconds(BlockKind.BALANCE, 1, 0)
                + rounds.count() * rounds.each() * typical.seconds(BlockKind.ROUND, passes(), rest)
                + rounds.count() * (passes() - 1) * Timing.BETWEEN_PASSES
                + Math.max(0, rounds.count() - 1) * Timing.WATER_BREAK
                + 2 * Timing.BETWEEN_PARTS;
        return Math.abs(seconds - (middleWindow().least() + middleWindow().most()) / 2);
    }

    /**
     * Warm-up and cool-down for so many seconds.
     *
     * @param seconds from least to most
     */
    List<Place> ends(Window seconds) {
        int wanted = (seconds.least() + seconds.most()) / 2;
        int calm = typical.calm() > 0 ? 1 : 0;
        int bestUp = 0;
        int bestDown = 0;
        int bestOff = Integer.MAX_VALUE;
        for (int up = least(BlockKind.WARM_UP); up <= most(BlockKind.WARM_UP, 6); up++) {
            for (int down = least(BlockKind.COOL_DOWN); down <= most(BlockKind.COOL_DOWN, 7); down++) {
                int off = Math.abs(up * typical.seconds(BlockKind.WARM_UP, 1, 0)
                        + down * typical.seconds(BlockKind.COOL_DOWN, 1, 0)
                        + calm * typical.calmSeconds()
                        + Timing.BETWEEN_PARTS
                        - wanted);
                int uneven = UNEVEN * Math.abs(up - down);
                if (off + uneven < bestOff) {
                    bestOff = off + uneven;
                    bestUp = up;
                    bestDown = down;
                }
            }
        }
        return ends(bestUp, bestDown, calm);
    }

    /** Seconds that one place more in one end than in the other counts for. */
    private static final int UNEVEN = 10;

    private int least(BlockKind end) {
        return most(end, minutes < 13 ? 1 : 2);
    }

    private int most(BlockKind end, int wanted) {
        return (int) Math.min(wanted, typical.movements(end));
    }

    private static List<Place> ends(int up, int down, int calm) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < up; i++) {
            places.add(place(BlockKind.WARM_UP, 0, i, Math.max(1, up - 1), 0));
        }
        for (int i = 0; i < down; i++) {
            places.add(place(BlockKind.COOL_DOWN, Place.COOL_DOWN, i, down, Timing.BETWEEN_PARTS));
        }
        if (calm > 0) {
            places.add(new Place(BlockKind.COOL_DOWN, Place.COOL_DOWN, down, 1, true, 1, 0, 0, Timing.BETWEEN_PARTS));
        }
        return places;
    }

    /** Seconds that balance and rounds may take, so that the ends have room and something to do. */
    Window middleWindow() {
        int seconds = 60 * minutes;
        int most = seconds - Math.clamp(seconds * 37L / 100, 240, 840);
        int least = seconds * 9 / 10 - Math.clamp(seconds * 45L / 100, 270, 1080);
        return new Window(least, most);
    }

    int passes() {
        return minutes < 25 ? 1 : 2;
    }

    private int leastRounds() {
        return minutes < 18 ? 1 : minutes < 45 ? 2 : 3;
    }

    private int mostRounds() {
        return minutes < 13 ? 1 : minutes < 18 ? 2 : minutes < 45 ? 3 : 4;
    }
}
