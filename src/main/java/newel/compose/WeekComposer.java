package newel.compose;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;

/**
 * Composes a week. Which groups may be worked hard on which day is settled first, for all days together; then each day is
 * composed, and proved for itself. Most items return from the first day; on each later day the one or two whose runner-up
 * was nearly as good make room. That no other week would be better on the whole is not said.
 */
public final class WeekComposer {
    /** So many change from day to day, where a runner-up is at most so many points behind (design choices). */
    private static final int CHANGES = 2;

    private static final int NEARLY_AS_GOOD = 6;

    private final Catalogue catalogue;
    private final Composer composer;

    public WeekComposer(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.composer = new Composer(catalogue);
    }

    /** @param hands by day what the instructor has decided; these are the days that are composed, and never none */
    public Week compose(Wish wish, Suiting suiting, SortedMap<DayOfWeek, Hand> hands) {
        Loads loads = Loads.over(hands.keySet());
        Map<DayOfWeek, Composed> days = new EnumMap<>(DayOfWeek.class);
        Map<String, Integer> recent = new HashMap<>(wish.recent());
        List<Set<String>> changes = List.of();
        Session first = null;
        for (DayOfWeek day : hands.keySet()) {
            Set<String> out = days.isEmpty() || days.size() > changes.size() ? Set.of() : changes.get(days.size() - 1);
            Wish today = wish.withGroups(wish.groups(), loads.on(day)).withRecent(recent);
            today = first == null ? today : today.after(first);
            Composed composed = composed(today, hands.get(day), out, suiting);
            if (composed instanceof Composed.Made made) {
                made.session().items().forEach(item -> recent.merge(item.movement(), 1, Integer::sum));
                changes = first == null ? changes(made, hands.values()) : changes;
                first = first == null ? made.session() : first;
            }
            days.put(day, composed);
        }
        return new Week(days, Reached.of(catalogue, sessions(days)));
    }

    /** A change from day to day is not worth a wish. */
    private Composed composed(Wish wish, Hand hand, Set<String> out, Suiting suiting) {
        Composed changed = composer.compose(wish.withHand(without(hand, out)), suiting);
        boolean whole = changed instanceof Composed.Made made && made.givenUp().isEmpty();
        return whole || out.isEmpty() ? changed : composer.compose(wish.withHand(hand), suiting);
    }

    private static SortedMap<DayOfWeek, Session> sessions(Map<DayOfWeek, Composed> days) {
        SortedMap<DayOfWeek, Session> sessions = new TreeMap<>();
        Week.made(days).forEach((day, made) -> sessions.put(day, made.session()));
        return sessions;
    }

    private static Hand without(Hand hand, Set<String> movements) {
        Set<String> banned = new HashSet<>(hand.banned());
        banned.addAll(movements);
        return hand.banning(banned);
    }

    /** Pairs of movements of balance and rounds, those with the nearest runner-up first. */
    private List<Set<String>> changes(Composed.Made made, Collection<Hand> hands) {
        List<String> movable = made.why().stream()
                .filter(why -> !why.runnerUp().isEmpty() && nearness(why) <= NEARLY_AS_GOOD)
                .filter(why -> hands.stream().noneMatch(hand -> hand.holds(why.movement())))
                .filter(why -> catalogue.movement(why.movement()).orElseThrow().kind() == Kind.STRENGTH)
                .sorted(Comparator.comparingInt(WeekComposer::nearness).thenComparing(Why::movement))
                .map(Why::movement)
                .toList();
        List<Set<String>> changes = new ArrayList<>();
        for (int from = 0; from < movable.size(); from += CHANGES) {
            changes.add(Set.copyOf(movable.subList(from, Math.min(movable.size(), from + CHANGES))));
        }
        return changes;
    }

    /** How far the runner-up is behind if neither were known from before. */
    private static int nearness(Why why) {
        return why.behind() - why.points(Term.RETURNS) - why.points(Term.SAME_PLACE);
    }
}
