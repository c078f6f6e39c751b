package newel.limit;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import newel.catalogue.Kit;
import newel.catalogue.Position;

/** Says what a change of limits gives back. Loosening what a clinician ordered asks for a reason. */
public final class Loosening {
    private Loosening() {}

    /** The limits that held before and that the new ones, all together, no longer hold. */
    public static List<Limit> loosened(List<Limit> before, List<Limit> after) {
        return before.stream().filter(limit -> !holds(after, limit)).toList();
    }

    public static boolean asksForReason(Limitation before, List<Limit> after) {
        return before.source() == Limitation.Source.CLINICIAN
                && !loosened(before.limits(), after).isEmpty();
    }

    private static boolean holds(List<Limit> all, Limit limit) {
        if (limit instanceof Limit.Positions positions) {
            return positions
                    .allowed()
                    .containsAll(common(all, Limit.Positions.class, Limit.Positions::allowed, Position.class));
        }
        if (limit instanceof Limit.KitAtHome home) {
            return home.kit().containsAll(common(all, Limit.KitAtHome.class, Limit.KitAtHome::kit, Kit.class));
        }
        return halves(limit).stream().allMatch(half -> all.stream().anyMatch(tight -> Tightness.implies(tight, half)));
    }

    /** One limit may hold the left side and another one the right. */
    private static List<? extends Limit> halves(Limit limit) {
        return limit instanceof Limit.OfSide sided && sided.side() == Sided.BOTH
                ? List.of(sided.on(Sided.LEFT), sided.on(Sided.RIGHT))
                : List.of(limit);
    }

    private static <L extends Limit, E extends Enum<E>> Set<E> common(
            List<Limit> all, Class<L> type, Function<L, Set<E>> members, Class<E> of) {
        Set<E> common = EnumSet.allOf(of);
        all.stream().filter(type::isInstance).map(type::cast).map(members).forEach(common::retainAll);
        return common;
    }
}
