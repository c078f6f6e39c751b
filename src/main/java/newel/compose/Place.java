package newel.compose;

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

    boolean optional() {
        return !last && index >= least;
    }

    boolean first() {
        return index == 0;
    }

    /** Seconds of an option here, with what goes before it and between passes. */
    int seconds(Option option) {
        int own = Timing.all(kind, option.work(), passes, rest);
        return first() ? own + breakBefore + (passes - 1) * Timing.BETWEEN_PASSES : own;
    }

    /** Seconds between the item before and this one that do not end a run of standing. */
    int pause() {
        return rest + (kind == BlockKind.ROUND ? 0 : Timing.SHOW);
    }

    String name() {
        return kind.words() + " " + block + "." + (index + 1);
    }
}
