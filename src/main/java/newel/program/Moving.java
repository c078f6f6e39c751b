package newel.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import newel.compose.Block;
import newel.compose.Item;
import newel.compose.Session;

/** Moves an item one place within its block, or from a block's end into the next one. */
final class Moving {
    /** Nothing where there is no place to go to. */
    static Optional<Session> moved(Session session, String movement, int by) {
        List<Block> blocks = session.blocks();
        Item item = session.item(movement).orElseThrow();
        int at = block(blocks, item);
        int to = blocks.get(at).items().indexOf(item) + by;
        if (to >= 0 && to < blocks.get(at).items().size()) {
            return Optional.of(with(blocks, at, placed(blocks.get(at), item, to)));
        }
        boolean leaves = at + by >= 0 && at + by < blocks.size();
        return leaves ? Optional.of(across(blocks, at, at + by, item)) : Optional.empty();
    }

    private static int block(List<Block> blocks, Item item) {
        return IntStream.range(0, blocks.size())
                .filter(i -> blocks.get(i).items().contains(item))
                .findFirst()
                .orElseThrow();
    }

    /** A block that is left empty goes. */
    private static Session across(List<Block> blocks, int from, int into, Item item) {
        int place = into < from ? blocks.get(into).items().size() : 0;
        return with(
                        with(blocks, into, placed(blocks.get(into), item, place))
                                .blocks(),
                        from,
                        without(blocks.get(from), item))
                .map(items -> items);
    }

    private static Block placed(Block block, Item item, int place) {
        List<Item> items = new ArrayList<>(without(block, item).items());
        items.add(place, item);
        return block.withItems(items);
    }

    private static Block without(Block block, Item item) {
        return block.withItems(
                block.items().stream().filter(each -> !each.equals(item)).toList());
    }

    private static Session with(List<Block> blocks, int at, Block block) {
        List<Block> changed = new ArrayList<>(blocks);
        changed.set(at, block);
        return new Session(changed);
    }

    private Moving() {}
}
