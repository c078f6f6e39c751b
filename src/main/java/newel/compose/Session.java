package newel.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Blocks in order. */
public record Session(List<Block> blocks) {
    public Session {
        blocks = List.copyOf(blocks);
    }

    public Stream<Item> items() {
        return blocks.stream().flatMap(block -> block.items().stream());
    }

    public Optional<Item> item(String movement) {
        return items().filter(item -> item.movement().equals(movement)).findFirst();
    }

    /** The same session with each block's items changed; blocks left without items go. */
    public Session map(UnaryOperator<List<Item>> change) {
        return new Session(blocks.stream()
                .map(block -> block.withItems(change.apply(block.items())))
                .filter(block -> !block.items().isEmpty())
                .toList());
    }
}
