package newel.program;

import java.util.HashSet;
import java.util.Set;
import newel.catalogue.Purpose;
import newel.compose.Hand;

/**
 * What the instructor asks of composing. Items that she keeps exactly as they are stand in the sessions.
 *
 * @param minutes the most that a session may take
 * @param pinned movements that are always in
 * @param banned movements that stay out
 * @param moreOf what to do more of
 */
public record Brief(int minutes, Set<String> pinned, Set<String> banned, Set<Purpose> moreOf) {
    /** As many minutes as the client wished for at intake. */
    private static final int AS_WISHED = 0;

    /** Of a program that was composed before this was kept. */
    static final Brief UNKNOWN = of(AS_WISHED);

    public Brief {
        pinned = Set.copyOf(pinned);
        banned = Set.copyOf(banned);
        moreOf = Set.copyOf(moreOf);
    }

    public static Brief of(int minutes) {
        return new Brief(minutes, Set.of(), Set.of(), Set.of());
    }

    /** With these minutes where none are set. */
    public Brief or(int wished) {
        return minutes == AS_WISHED ? new Brief(wished, pinned, banned, moreOf) : this;
    }

    public Brief pinning(String movement) {
        return new Brief(minutes, with(pinned, movement), without(banned, movement), moreOf);
    }

    public Brief banning(String movement) {
        return new Brief(minutes, without(pinned, movement), with(banned, movement), moreOf);
    }

    /** Neither always in nor kept out. */
    public Brief free(String movement) {
        return new Brief(minutes, without(pinned, movement), without(banned, movement), moreOf);
    }

    private static Set<String> with(Set<String> all, String one) {
        Set<String> with = new HashSet<>(all);
        with.add(one);
        return with;
    }

    private static Set<String> without(Set<String> all, String one) {
        Set<String> without = new HashSet<>(all);
        without.remove(one);
        return without;
    }

    Hand hand() {
        return Hand.FREE.pinning(pinned).banning(banned).wantingMoreOf(moreOf);
    }
}
