package newel.compose;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import newel.adapt.Way;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Trait;
import newel.catalogue.Variant;
import newel.limit.Reason;

/**
 * Everything that a session may be made of: every form of every movement that fits, by itself and not in place of another
 * movement. Practising the way to the floor has its own cautions and is for the instructor to add.
 */
final class Pool {
    private static final Dose BURST = new Dose(1, 0, Costs.SHIPPED.seconds("pulseBurst"));

    /** A shorter session has room for beginner's doses only (design choice). */
    private static final int SHORT = 15;

    private final Catalogue catalogue;
    private final Wish wish;
    private final Suiting suiting;
    private final List<Option> options = new ArrayList<>();
    private final List<Movement> without = new ArrayList<>();

    Pool(Catalogue catalogue, Wish wish, Suiting suiting) {
        this.catalogue = catalogue;
        this.wish = wish;
        this.suiting = suiting;
        Set<String> kept = new java.util.HashSet<>();
        wish.hand().kept().forEach((item, part) -> {
            kept.add(item.movement());
            options.add(kept(item, part));
        });
        for (Movement movement : catalogue.movements()) {
            if (!kept.contains(movement.id()) && !goesToTheFloor(movement)) {
                add(movement);
            }
        }
    }

    List<Option> options() {
        return options;
    }

    /** Movements no form of which fits. */
    List<Movement> without() {
        return without;
    }

    /** Why nothing of a movement fits. */
    List<String> reasons(Movement movement) {
        return switch (suiting.adapt(wanted(movement))) {
            case Choice.Leave left -> left.reasons();
            case Choice.Do other -> other.why();
        };
    }

    private Variant wanted(Movement movement) {
        return Wanted.of(catalogue, movement, wish.levels().of(movement));
    }

    private void add(Movement movement) {
        Variant wanted = wanted(movement);
        List<Way> ways = suiting.ways(wanted);
        if (ways.isEmpty()) {
            without.add(movement);
        }
        for (Way way : ways) {
            Dose dose = dose(movement, way);
            if (movement.kind() == Kind.PULSE) {
                options.add(option(movement, wanted, way, dose, EnumSet.of(BlockKind.WARM_UP)));
                options.add(option(movement, wanted, way, burst(dose), EnumSet.of(BlockKind.ROUND)));
            } else {
                options.add(option(movement, wanted, way, dose, parts(movement.kind())));
            }
        }
    }

    private Dose dose(Movement movement, Way way) {
        return Doses.of(
                way.variant(),
                movement.kind(),
                wish.minutes() < SHORT ? Level.BEGINNER : wish.levels().of(movement),
                dose -> suiting.broken(way.variant(), way.share(), dose).isEmpty());
    }

    /** What counts repetitions is short by itself. */
    private static Dose burst(Dose dose) {
        return dose.repetitions() == 0 && dose.seconds() > BURST.seconds() ? BURST : dose;
    }

    static Set<BlockKind> parts(Kind kind) {
        return switch (kind) {
            case PULSE -> EnumSet.of(BlockKind.WARM_UP, BlockKind.ROUND);
            case MOBILITY -> EnumSet.of(BlockKind.WARM_UP, BlockKind.COOL_DOWN);
            case STRENGTH -> EnumSet.of(BlockKind.ROUND);
            case BALANCE -> EnumSet.of(BlockKind.BALANCE);
            case STRETCH, BREATH -> EnumSet.of(BlockKind.COOL_DOWN);
        };
    }

    private Option option(Movement movement, Variant wanted, Way way, Dose dose, Set<BlockKind> parts) {
        Variant variant = way.variant();
        boolean same = variant.id().equals(wanted.id());
        How how = !same ? How.REGRESSED : way.share().whole() ? How.KEPT : How.TRIMMED;
        Item item = new Item(
                movement.id(),
                variant.id(),
                way.share(),
                dose,
                how,
                same ? List.of() : way.path(),
                way.reasons().stream().map(Reason::text).toList(),
                "");
        return option(variant, item, way.loss(), parts, false);
    }

    private Option kept(Item item, BlockKind part) {
        return option(catalogue.variant(item.variant()).orElseThrow(), item, 0, EnumSet.of(part), true);
    }

    private Option option(Variant variant, Item item, double loss, Set<BlockKind> parts, boolean kept) {
        return new Option(
                catalogue.movementOf(variant),
                variant,
                item,
                loss,
                suiting.lasts(variant, item.share(), item.dose()),
                parts,
                kept,
                wish.serves(variant.purposes()),
                Stance.of(variant),
                Timing.work(variant, item.dose()));
    }

    private static boolean goesToTheFloor(Movement movement) {
        return movement.variants().stream().anyMatch(variant -> variant.traits().contains(Trait.FLOOR_TRANSFER));
    }
}
