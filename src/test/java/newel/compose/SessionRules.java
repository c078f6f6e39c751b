package newel.compose;

import static newel.Shipped.CATALOGUE;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import newel.Shipped;
import newel.catalogue.Kind;
import newel.catalogue.Position;
import newel.catalogue.Support;
import newel.catalogue.Trait;
import newel.catalogue.Variant;

/** Judges a composed session anew, by the rules as they are meant; shares no code with the search. */
final class SessionRules {
    private final Wish wish;
    private final Suiting suiting;
    private final Composed.Made made;
    private final List<String> broken = new ArrayList<>();

    private SessionRules(Wish wish, Suiting suiting, Composed.Made made) {
        this.wish = wish;
        this.suiting = suiting;
        this.made = made;
    }

    static List<String> broken(Wish wish, Suiting suiting, Composed.Made made) {
        SessionRules rules = new SessionRules(wish, suiting, made);
        rules.items();
        rules.minutes();
        rules.parts();
        rules.endurance();
        rules.balance();
        rules.wishes();
        return rules.broken;
    }

    private void items() {
        Set<String> movements = new HashSet<>();
        made.session().items().forEach(item -> {
            Variant variant = Shipped.variant(item.variant());
            check(movements.add(item.movement()), item.movement() + " twice");
            check(suiting.broken(variant, item.share(), item.dose()).isEmpty(), item.variant() + " does not fit");
            check(!variant.traits().contains(Trait.FLOOR_TRANSFER), item.variant() + " goes to the floor");
            check(!wish.hand().banned().contains(item.movement()), item.movement() + " is banned");
        });
    }

    private void minutes() {
        int seconds = new Timing(CATALOGUE).session(made.session());
        check(seconds <= 60 * wish.minutes(), seconds + " s are too many");
        boolean filled = givenUp().noneMatch(wish -> wish.startsWith("Nine tenths"));
        check(!filled || seconds >= 54 * wish.minutes(), seconds + " s are too few");
    }

    private java.util.stream.Stream<String> givenUp() {
        return made.givenUp().stream().map(GivenUp::wish);
    }

    private void parts() {
        List<BlockKind> kinds =
                made.session().blocks().stream().map(Block::kind).toList();
        check(kinds.equals(kinds.stream().sorted().toList()), "parts in the order " + kinds);
        for (Block block : made.session().blocks()) {
            for (Item item : block.items()) {
                Kind kind = CATALOGUE.movement(item.movement()).orElseThrow().kind();
                check(block.kind().kinds().contains(kind), item.movement() + " in " + block.kind());
                int effort = Shipped.variant(item.variant()).effort();
                check(block.kind() != BlockKind.WARM_UP || effort <= 4, item.variant() + " in the warm-up");
                check(block.kind() != BlockKind.COOL_DOWN || effort <= 2, item.variant() + " in the cool-down");
            }
        }
    }

    /** Every run of neighbours that stand, or keep the arms up, within a part; between parts and passes one sits. */
    private void endurance() {
        Endurance most = suiting.endurance();
        for (Block block : made.session().blocks()) {
            int standing = 0;
            int armsUp = 0;
            for (Item item : block.items()) {
                var lasts = suiting.lasts(Shipped.variant(item.variant()), item.share(), item.dose());
                standing = lasts.standingSeconds() == 0 ? 0 : standing + lasts.standingSeconds();
                armsUp = lasts.armsHighSeconds() == 0 ? 0 : armsUp + lasts.armsHighSeconds();
                check(standing <= most.standingSeconds(), "stands " + standing + " s");
                check(armsUp <= most.armsHighSeconds(), "arms up " + armsUp + " s");
            }
        }
    }

    private void balance() {
        List<Variant> onTheFeet = made.session()
                .items()
                .map(item -> Shipped.variant(item.variant()))
                .filter(variant -> variant.position() == Position.STANDING || variant.position() == Position.STEPPING)
                .toList();
        if (!onTheFeet.isEmpty()) {
            Variant last = onTheFeet.getLast();
            boolean balance = CATALOGUE.movementOf(last).kind() == Kind.BALANCE;
            check(
                    !balance || last.support().compareTo(Support.FINGERTIPS) < 0,
                    last.id() + " is hard balance and last on the feet");
        }
    }

    private void wishes() {
        for (String movement : wish.hand().pinned()) {
            String name = CATALOGUE.movement(movement).orElseThrow().name();
            boolean told = givenUp().anyMatch(given -> given.contains(name));
            check(told || made.session().item(movement).isPresent(), movement + " was pinned");
        }
        made.givenUp().forEach(given -> check(!given.conflict().isEmpty(), given.wish() + " without a reason"));
    }

    private void check(boolean holds, String otherwise) {
        if (!holds) {
            broken.add(otherwise);
        }
    }
}
