package newel.compose;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * A slot of a session.
 *
 * @param block number of its part within the problem
 * @param index place within the part
 * @param least items that the part has at least, when it is there at all
 * @param last the part has a fixed last place, and this is it
 * @param roundsAfter how many rounds come after this one
 * @param breakBefore seconds of break before the part
 */
record Place(
        BlockKind kind,
        int block,
        int index,
        int least,
        boolean last,
        int passes,
        int rest,
        int roundsAfter,
        int breakBefore) {
    /** Blocks are numbered within a problem: balance before the rounds, warm-up before cool-down. */
    static final int FIRST_ROUND = 1;

    static final int COOL_DOWN = 1;

    boolean optional() {
        return !last && index >= least;
    }

    boolean first() {
        return index == 0;
    }

    /** The same where one item in a part is enough. */
    Place lean() {
        return new Place(kind, block, index, Math.min(1, least), last, passes, rest, roundsAfter, breakBefore);
    }

    /** No place is empty before a fixed last one, so that what lies between two items is known. */
    boolean inLean() {
        return kind != BlockKind.COOL_DOWN || first() || last;
    }

    /** Seconds of an option here, with what goes before it and between passes. */
    int seconds(Option option) {
        int own = Timing.all(kind, option.work(), passes);
        return first() ? own + breakBefore + (passes - 1) * Timing.BETWEEN_PASSES : own;
    }

    /** Longest time between the item before and this one that does not end a run of standing. */
    int pause() {
        return Math.max(rest, Timing.CHANGE_PLACE + Timing.TAKE_UP) + (kind == BlockKind.ROUND ? 0 : Timing.SHOW);
    }

    String name() {
        return name(kind, block, index);
    }

    private static String name(BlockKind kind, int block, int index) {
        return kind.words() + " " + block + "." + (index + 1);
    }

    /** The name of the place that each movement of a session stands in. */
    static Map<String, String> names(Session session) {
        Map<String, String> names = new HashMap<>();
        Map<BlockKind, Integer> blocks =
                new EnumMap<>(Map.of(BlockKind.ROUND, FIRST_ROUND, BlockKind.COOL_DOWN, COOL_DOWN));
        for (Block block : session.blocks()) {
            int number = blocks.getOrDefault(block.kind(), 0);
            for (int index = 0; index < block.items().size(); index++) {
                names.put(block.items().get(index).movement(), name(block.kind(), number, index));
            }
            blocks.merge(block.kind(), 1, Integer::sum);
        }
        return names;
    }
}
