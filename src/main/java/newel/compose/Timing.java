package newel.compose;

import java.util.LinkedHashMap;
import java.util.Map;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Sides;
import newel.catalogue.Variant;

/**
 * How long things take, in seconds. What an item takes is rounded up to five seconds. Breaks between parts, passes and
 * rounds are long enough to change position and kit in; within a part each change takes its own time.
 */
public final class Timing {
    private static final Costs COSTS = Costs.SHIPPED;
    public static final int WATER_BREAK = COSTS.seconds("waterBreak");
    static final int SHOW = COSTS.seconds("show");
    static final int CHANGE_SIDE = COSTS.seconds("changeSide");
    static final int CHANGE_POSITION = COSTS.seconds("changePosition");
    static final int CHANGE_PLACE = COSTS.seconds("changePlace");
    static final int TAKE_UP = COSTS.seconds("takeUp");
    static final int BETWEEN_PARTS = COSTS.seconds("betweenParts");
    static final int BETWEEN_PASSES = COSTS.seconds("betweenPasses");
    private static final double FIRST_PASS = COSTS.share("firstPass");
    private static final int GRID = 5;

    private final Catalogue catalogue;

    public Timing(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** One pass of one item, without showing it, changing position or resting. */
    public int work(Item item) {
        return work(variant(item), item.dose());
    }

    static int work(Variant variant, Dose dose) {
        double set = dose.repetitions() == 0
                ? dose.seconds()
                : dose.repetitions() * (dose.seconds() == 0 ? variant.tempo().seconds() : holding(variant, dose));
        int sides = variant.sides() == Sides.EACH ? 2 : 1;
        double changes = (sides * Math.max(1, dose.sets()) - 1) * (double) CHANGE_SIDE;
        return (int) Math.ceil(Math.max(1, dose.sets()) * set * sides + changes);
    }

    private static double holding(Variant variant, Dose dose) {
        return dose.seconds() + variant.tempo().out() + variant.tempo().back();
    }

    /** An item's first pass with showing or explaining it. */
    static int first(BlockKind kind, int work) {
        return onGrid(kind == BlockKind.ROUND ? work * FIRST_PASS : work + SHOW);
    }

    static int again(int work) {
        return onGrid(work);
    }

    private static int onGrid(double seconds) {
        return GRID * (int) Math.ceil(seconds / GRID);
    }

    /** All passes of an item. */
    static int all(BlockKind kind, int work, int passes) {
        return first(kind, work) + (passes - 1) * again(work);
    }

    /** Between two items of a part: who changes position or place rests meanwhile. */
    static int pause(Stance before, Stance after, int rest) {
        return Math.max(rest, before.change(after));
    }

    private static int pause(Variant before, Variant after, Block block) {
        return before == null ? 0 : pause(Stance.of(before), Stance.of(after), block.restSeconds());
    }

    /** Seconds before a block of this kind, after one of that kind. */
    static int breakBetween(BlockKind before, BlockKind kind) {
        return before == BlockKind.ROUND && kind == BlockKind.ROUND ? WATER_BREAK : BETWEEN_PARTS;
    }

    /** A block from the start of its first item to the end of its last. */
    public int block(Block block) {
        int seconds = (block.passes() - 1) * BETWEEN_PASSES;
        Variant before = null;
        for (Item item : block.items()) {
            Variant variant = variant(item);
            seconds += all(block.kind(), work(item), block.passes());
            seconds += block.passes() * pause(before, variant, block);
            before = variant;
        }
        return seconds;
    }

    /** When each item begins in its first pass, seconds from the start, by movement. */
    public Map<String, Integer> clock(Session session) {
        Map<String, Integer> clock = new LinkedHashMap<>();
        int at = 0;
        Block last = null;
        for (Block block : session.blocks()) {
            at += last == null ? 0 : breakBetween(last.kind(), block.kind());
            firstPass(block, at, clock);
            at += block(block);
            last = block;
        }
        return clock;
    }

    private void firstPass(Block block, int from, Map<String, Integer> clock) {
        int at = from;
        Variant before = null;
        for (Item item : block.items()) {
            at += pause(before, variant(item), block);
            clock.put(item.movement(), at);
            at += first(block.kind(), work(item));
            before = variant(item);
        }
    }

    /** The whole session with its breaks. */
    public int session(Session session) {
        int seconds = 0;
        Block last = null;
        for (Block block : session.blocks()) {
            seconds += last == null ? 0 : breakBetween(last.kind(), block.kind());
            seconds += block(block);
            last = block;
        }
        return seconds;
    }

    private Variant variant(Item item) {
        return catalogue.variant(item.variant()).orElseThrow();
    }
}
