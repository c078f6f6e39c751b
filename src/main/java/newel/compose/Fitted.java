package newel.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import newel.catalogue.Dose;

/**
 * Fits a session to its seconds: of all sizes in a fixed list, the fullest that stays within them. A size says how many
 * items each part has, how often the rounds are gone through and how long the rests are.
 */
final class Fitted {
    /** Shortest and longest rest between the movements of a round, seconds (1 minute for light work is usual: common practice). */
    private static final int[] RESTS = {10, 15, 20, 25, 30, 35, 40, 45, 50, 60};

    private static final int AS_WRITTEN = Integer.MAX_VALUE;
    /** Where two passes do not fit otherwise, each pass has no more repetitions than this, tried in turn (design choice). */
    private static final int[] REPETITIONS = {AS_WRITTEN, 6, 5, 4};

    private final Timing timing;
    private final int seconds;

    Fitted(Timing timing, int seconds) {
        this.timing = timing;
        this.seconds = seconds;
    }

    private record Size(int warmUp, int rounds, int perRound, int passes, int coolDown, int rest, int repetitions) {
        int movements() {
            return rounds * perRound;
        }
    }

    /** A session uses at least this share of its time where enough movements fit. */
    static final double FULL = 0.9;

    private record Tried(Size size, Session session, int seconds) {}

    /** Of those within the time the fullest; among full ones two passes, then more movements, then warm-up and cool-down. */
    Session fit(FirstDraft.Parts parts) {
        return best(parts, sizes())
                .or(() -> best(parts, smallSizes()))
                .map(Tried::session)
                .orElseGet(() -> session(parts, smallSizes().getFirst()));
    }

    private Optional<Tried> best(FirstDraft.Parts parts, List<Size> sizes) {
        return sizes.stream()
                .map(size -> tried(parts, size))
                .filter(tried -> tried.seconds() <= seconds)
                .max(Comparator.comparing((Tried tried) -> tried.seconds() >= FULL * seconds)
                        .thenComparingInt(tried -> Math.min(2, tried.size().rounds()))
                        .thenComparingInt(tried -> tried.size().passes())
                        .thenComparingInt(tried -> tried.size().repetitions())
                        .thenComparingInt(tried -> Math.min(3, tried.size().warmUp())
                                + Math.min(3, tried.size().coolDown()))
                        .thenComparingInt(Fitted::movements)
                        .thenComparingInt(tried -> Math.min(4, tried.size().warmUp())
                                + Math.min(4, tried.size().coolDown()))
                        .thenComparingInt(Tried::seconds));
    }

    private Tried tried(FirstDraft.Parts parts, Size size) {
        Session session = session(parts, size);
        return new Tried(size, session, timing.session(session));
    }

    private static int movements(Tried tried) {
        return tried.session().blocks().stream()
                .filter(block -> block.kind() == BlockKind.ROUND)
                .mapToInt(block -> block.items().size())
                .sum();
    }

    private static List<Size> sizes() {
        List<Size> sizes = new ArrayList<>();
        for (int rounds = 1; rounds <= 3; rounds++) {
            for (int perRound = 3; perRound <= 4; perRound++) {
                for (int passes = 1; passes <= 2; passes++) {
                    for (int warmUp = 2; warmUp <= 6; warmUp++) {
                        for (int coolDown = 2; coolDown <= 8; coolDown++) {
                            for (int rest : RESTS) {
                                for (int repetitions : REPETITIONS) {
                                    sizes.add(new Size(warmUp, rounds, perRound, passes, coolDown, rest, repetitions));
                                }
                            }
                        }
                    }
                }
            }
        }
        return sizes;
    }

    /** For a time too short for any other size, the smallest first. */
    private static List<Size> smallSizes() {
        List<Size> sizes = new ArrayList<>();
        for (int repetitions : new int[] {4, 5, 6, AS_WRITTEN}) {
            for (int ends = 1; ends <= 2; ends++) {
                for (int perRound = 1; perRound <= 3; perRound++) {
                    sizes.add(new Size(ends, 1, perRound, 1, ends, RESTS[0], repetitions));
                }
            }
        }
        return sizes;
    }

    private static Session session(FirstDraft.Parts parts, Size size) {
        List<Block> blocks = new ArrayList<>();
        add(blocks, BlockKind.WARM_UP, first(parts.warmUp(), size.warmUp()), 1, 0);
        add(blocks, BlockKind.BALANCE, parts.balance(), 1, 0);
        List<Item> movements = first(parts.rounds(), size.movements());
        for (int from = 0; from < movements.size(); from += size.perRound()) {
            List<Item> round = movements.subList(from, Math.min(movements.size(), from + size.perRound()));
            List<Item> dosed =
                    round.stream().map(item -> atMost(item, size.repetitions())).toList();
            add(blocks, BlockKind.ROUND, dosed, size.passes(), size.rest());
        }
        add(blocks, BlockKind.COOL_DOWN, first(parts.coolDown(), size.coolDown()), 1, 0);
        return new Session(blocks);
    }

    private static Item atMost(Item item, int repetitions) {
        Dose dose = item.dose();
        return dose.repetitions() <= repetitions
                ? item
                : item.withDose(new Dose(dose.sets(), repetitions, dose.seconds()));
    }

    private static void add(List<Block> blocks, BlockKind kind, List<Item> items, int passes, int rest) {
        if (!items.isEmpty()) {
            blocks.add(new Block(kind, items, passes, rest));
        }
    }

    private static List<Item> first(List<Item> items, int most) {
        return items.subList(0, Math.min(most, items.size()));
    }
}
