package newel.compose;

import java.util.List;

/**
 * Items done one after another.
 *
 * @param passes how often the block is gone through
 * @param restSeconds rest after each item of a round
 */
public record Block(BlockKind kind, List<Item> items, int passes, int restSeconds) {
    public Block {
        items = List.copyOf(items);
    }

    public Block withItems(List<Item> changed) {
        return new Block(kind, changed, passes, restSeconds);
    }
}
