package newel.compose;

import java.util.LinkedHashMap;
import java.util.Map;
import newel.catalogue.Catalogue;
import newel.catalogue.Dose;
import newel.catalogue.Position;
import newel.catalogue.Sides;
import newel.catalogue.Variant;

/**
 * How long things take, in whole seconds. Reading a card, changing sides, sitting or standing, fetching kit, and a first
 * pass that takes about a quarter longer because it is explained: common practice.
 */
public final class Timing {
    public static final int READ_CARD = 12;
    public static final int CHANGE_SIDE = 5;
    public static final int CHANGE_POSITION = 8;
    public static final int FETCH_KIT = 15;
    public static final int WATER_BREAK = 45;
    /** A first pass is explained: a quarter longer. */
    private static final double FIRST_PASS = 1.25;

    private final Catalogue catalogue;

    public Timing(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** One pass of one item, without reading it, changing position or resting. */
    public int work(Item item) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        Dose dose = item.dose();
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

    /** A block with its changes of position and kit, rests and first-pass explaining. */
    public int block(Block block) {
        double first = 0;
        double again = 0;
        Variant before = null;
        for (Item item : block.items()) {
            Variant variant = catalogue.variant(item.variant()).orElseThrow();
            int change = change(before, variant);
            first += READ_CARD + change + work(item) * (block.passes() > 1 ? FIRST_PASS : 1) + block.restSeconds();
            again += change + work(item) + block.restSeconds();
            before = variant;
        }
        return (int) Math.round(first + (block.passes() - 1) * again);
    }

    /** When each item begins in its first pass, seconds from the start, by movement. */
    public Map<String, Integer> clock(Session session) {
        Map<String, Integer> clock = new LinkedHashMap<>();
        int at = 0;
        for (Block block : session.blocks()) {
            double inside = at;
            Variant before = null;
            for (Item item : block.items()) {
                Variant variant = catalogue.variant(item.variant()).orElseThrow();
                clock.put(item.movement(), (int) inside);
                inside += READ_CARD
                        + change(before, variant)
                        + work(item) * (block.passes() > 1 ? FIRST_PASS : 1)
                        + block.restSeconds();
                before = variant;
            }
            at += block(block) + (block.kind() == BlockKind.ROUND ? WATER_BREAK : 0);
        }
        return clock;
    }

    private static int change(Variant before, Variant variant) {
        if (before == null) {
            return 0;
        }
        int position = sits(before.position()) == sits(variant.position()) ? 0 : CHANGE_POSITION;
        return position + (before.kit().containsAll(variant.kit()) ? 0 : FETCH_KIT);
    }

    private static boolean sits(Position position) {
        return position == Position.SEATED_BACK || position == Position.SEATED_EDGE;
    }

    /** The whole session with a water break after each round but the last. */
    public int session(Session session) {
        int blocks = session.blocks().stream().mapToInt(this::block).sum();
        long rounds = session.blocks().stream()
                .filter(block -> block.kind() == BlockKind.ROUND)
                .count();
        return blocks + (int) Math.max(0, rounds - 1) * WATER_BREAK;
    }
}
