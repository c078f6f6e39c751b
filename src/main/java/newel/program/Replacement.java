package newel.program;

import java.util.List;
import java.util.Optional;
import newel.compose.Item;

/** An item that no longer fits, why, and what would take its place; nothing when it has to go. */
public record Replacement(Item before, List<String> reasons, Optional<Item> after) {}
