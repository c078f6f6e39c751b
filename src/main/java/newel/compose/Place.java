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
        return kind.words() + " " + block + "." + (index + 1);
    }
}
