package newel.compose.exact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Random problems. */
final class Instances {
    /**
     * @param kinds states are a position (0, 1), a thing in hand (0…2) and one of so many muscle groups
     * @param points scores lie below this; few make equal scores
     */
    record Size(int slots, int candidates, int families, int demands, int kinds, int points) {}

    private final Random random;

    Instances(long seed) {
        random = new Random(seed);
    }

    Problem small() {
        Size size = new Size(
                3 + random.nextInt(3),
                2 + random.nextInt(4),
                2 + random.nextInt(7),
                random.nextInt(4),
                1 + random.nextInt(3),
                random.nextBoolean() ? 3 : 40);
        return problem(size, random.nextInt(3) == 0 ? 60 + 30 * random.nextInt(5) : 0, random.nextInt(3));
    }

    /** @param standing longest run, 0 for no limit; @param tightness 0 asks each demand once, 1 and 2 more */
    Problem problem(Size size, int standing, int tightness) {
        List<Slot> slots = new ArrayList<>();
        for (int s = 0; s < size.slots(); s++) {
            slots.add(slot(s, size));
        }
        List<Demand> demands = new ArrayList<>();
        for (int d = 0; d < size.demands(); d++) {
            int most = Math.max(1, size.slots() * tightness / 6);
            demands.add(new Demand("demand " + d, tightness == 0 ? random.nextInt(2) : random.nextInt(most) + 1));
        }
        int middle = 60 * size.slots();
        int half = 5 * (random.nextInt(3) * size.slots() / 2);
        int shift = 5 * (random.nextInt(17) - 8);
        return new Problem(
                slots,
                transitions(size.kinds()),
                demands,
                new Problem.Window(middle - half + shift, middle + half + shift),
                standing == 0
                        ? Problem.Endurance.WITHOUT_LIMIT
                        : new Problem.Endurance(standing, 40 + 20 * random.nextInt(4)));
    }

    private Slot slot(int s, Size size) {
        List<Candidate> candidates = new ArrayList<>();
        for (int c = 0; c < size.candidates(); c++) {
            candidates.add(candidate(s, c, size));
        }
        return new Slot("slot " + s, candidates, random.nextInt(4) == 0, 5 * random.nextInt(3));
    }

    private Candidate candidate(int s, int c, Size size) {
        int family = random.nextInt(size.families() + 1);
        int position = random.nextInt(2);
        int kind = random.nextInt(size.kinds());
        int state = (position * 3 + random.nextInt(3)) * size.kinds() + kind;
        int seconds = 5 * (6 + random.nextInt(13));
        int serves = 0;
        for (int d = 0; d < size.demands(); d++) {
            serves |= random.nextInt(3) == 0 ? 1 << d : 0;
        }
        return new Candidate(
                "c%d-%02d".formatted(s, c),
                family == size.families() ? "" : "f" + family,
                random.nextInt(size.points()),
                seconds,
                state,
                serves,
                position == 1 ? seconds : 0,
                random.nextInt(3) == 0 ? 20 : 0);
    }

    private static Transitions transitions(int kinds) {
        return new Transitions() {
            @Override
            public int penalty(int slot, int from, int to) {
                boolean sameThing = from / kinds % 3 == to / kinds % 3;
                boolean forbidden = from / kinds == 5 && to / kinds == 0;
                return forbidden ? FORBIDDEN : (sameThing ? 0 : 2) + (from % kinds == to % kinds ? 3 : 0);
            }

            @Override
            public int seconds(int slot, int from, int to) {
                return from / kinds / 3 == to / kinds / 3 ? 0 : 10;
            }
        };
    }

    Problem shuffled(Problem p) {
        List<Slot> slots = p.slots().stream()
                .map(slot -> {
                    List<Candidate> mixed = new ArrayList<>(slot.candidates());
                    Collections.shuffle(mixed, random);
                    return new Slot(slot.name(), mixed, slot.fresh(), slot.pause());
                })
                .toList();
        return new Problem(slots, p.transitions(), p.demands(), p.window(), p.endurance());
    }
}
