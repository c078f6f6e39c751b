package newel.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.compose.exact.Answer;
import newel.compose.exact.RunnerUp;

/** Makes a session with its reasons out of two solved problems. */
final class Telling {
    /** Of each kind, so many of the movements that would serve best are named when nothing of them fits. */
    private static final int NAMED = 6;

    private final Pool pool;
    private final Wish wish;

    Telling(Pool pool, Wish wish) {
        this.pool = pool;
        this.wish = wish;
    }

    Composed.Made made(List<GivenUp> before, Holding.Held middle, Holding.Held ends) {
        List<Block> outer = blocks(ends);
        List<Block> blocks = new ArrayList<>();
        outer.stream().filter(block -> block.kind() == BlockKind.WARM_UP).forEach(blocks::add);
        blocks.addAll(blocks(middle));
        outer.stream().filter(block -> block.kind() == BlockKind.COOL_DOWN).forEach(blocks::add);
        List<Why> why =
                Stream.concat(whys(middle).stream(), whys(ends).stream()).toList();
        List<GivenUp> givenUp = Stream.of(before, middle.givenUp(), ends.givenUp())
                .flatMap(List::stream)
                .toList();
        return new Composed.Made(
                new Session(blocks), leftOut(), proof(middle.answer()).and(proof(ends.answer())), why, givenUp);
    }

    private static Proof proof(Answer.Found found) {
        return new Proof(found.optimal(), found.score(), found.bound());
    }

    private static List<Block> blocks(Holding.Held held) {
        List<Block> blocks = new ArrayList<>();
        List<Item> items = new ArrayList<>();
        Place part = null;
        for (Assembly.Chosen chosen : held.assembly().chosen(held.answer().items())) {
            if (part != null && chosen.place().block() != part.block()) {
                blocks.add(block(part, items));
                items.clear();
            }
            part = chosen.place();
            items.add(chosen.option().item());
        }
        if (part != null) {
            blocks.add(block(part, items));
        }
        return blocks;
    }

    private static Block block(Place part, List<Item> items) {
        return new Block(part.kind(), items, part.passes(), part.rest());
    }

    private static List<Why> whys(Holding.Held held) {
        Assembly assembly = held.assembly();
        RunnerUp.Search search =
                new RunnerUp.Search(held.assembly().problem(), held.answer().items());
        return assembly.chosen(held.answer().items()).stream()
                .map(chosen -> why(assembly, chosen, search.in(chosen.slot())))
                .toList();
    }

    private static Why why(Assembly assembly, Assembly.Chosen chosen, Optional<RunnerUp> next) {
        List<Why.Counted> lines = Term.all(assembly.context(), chosen.place(), chosen.option()).entrySet().stream()
                .map(entry -> new Why.Counted(entry.getKey().title(), entry.getValue()))
                .toList();
        return new Why(
                chosen.option().movement().id(),
                lines,
                next.map(each -> assembly.option(each.candidate()).variant().id())
                        .orElse(""),
                next.map(RunnerUp::behind).orElse(0));
    }

    /** Movements no form of which fits, if they are among those that would have served their kind best. */
    private List<LeftOut> leftOut() {
        Map<String, Movement> all = new HashMap<>();
        pool.without().forEach(movement -> all.put(movement.id(), movement));
        pool.options().forEach(option -> all.put(option.movement().id(), option.movement()));
        Set<String> without = pool.without().stream().map(Movement::id).collect(Collectors.toSet());
        Map<Kind, List<Movement>> kinds = all.values().stream()
                .sorted(Comparator.comparingDouble((Movement each) -> -wish.serves(each.purposes()))
                        .thenComparing(Movement::id))
                .collect(Collectors.groupingBy(Movement::kind, () -> new EnumMap<>(Kind.class), Collectors.toList()));
        return kinds.values().stream()
                .flatMap(movements -> movements.stream().limit(NAMED))
                .filter(movement -> without.contains(movement.id()))
                .map(movement -> new LeftOut(movement.id(), pool.reasons(movement)))
                .toList();
    }
}
