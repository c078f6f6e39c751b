package newel.compose;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Purpose;

/**
 * Composes a week. Which groups may be worked hard on which day is settled first, for all days together; then each day is
 * composed, and proved for itself. Most items return from the first day; on each later day the one or two whose runner-up
 * was nearly as good make room. That no other week would be better on the whole is not said.
 */
public final class WeekComposer {
    /** WHO 2020, adults of 65 and over: muscle groups on 2 days or more, balance with strength on 3 or more. */
    private static final int GROUP_DAYS = 2;

    private static final int BALANCE_DAYS = 3;
    /** So many change from day to day, where a runner-up is at most so many points behind (design choices). */
    private static final int CHANGES = 2;

    private static final int NEARLY_AS_GOOD = 6;

    private final Catalogue catalogue;
    private final Composer composer;

    public WeekComposer(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.composer = new Composer(catalogue);
    }

    public Week compose(Wish wish, Suiting suiting, Set<DayOfWeek> days) {
        Loads loads = Loads.over(days);
        Map<DayOfWeek, Composed> sessions = new EnumMap<>(DayOfWeek.class);
        Map<String, Integer> recent = new HashMap<>(wish.recent());
        List<Set<String>> changes = List.of();
        int number = 0;
        for (DayOfWeek day : days.stream().sorted().toList()) {
            Wish today = wish.withGroups(wish.groups(), loads.on(day)).withRecent(recent);
            if (number > 0 && number <= changes.size()) {
                today = today.withHand(without(wish.hand(), changes.get(number - 1)));
            }
            Composed composed = composer.compose(today, suiting);
            sessions.put(day, composed);
            if (composed instanceof Composed.Made made) {
                made.session().items().forEach(item -> recent.merge(item.movement(), 1, Integer::sum));
                changes = number == 0 ? changes(made, wish.hand()) : changes;
            }
            number++;
        }
        return told(sessions, days.size());
    }

    private static Hand without(Hand hand, Set<String> movements) {
        Set<String> banned = new HashSet<>(hand.banned());
        banned.addAll(movements);
        return hand.banning(banned);
    }

    /** Pairs of movements of balance and rounds, those with the nearest runner-up first. */
    private List<Set<String>> changes(Composed.Made made, Hand hand) {
        List<String> movable = made.why().stream()
                .filter(why -> !why.runnerUp().isEmpty() && why.behind() <= NEARLY_AS_GOOD)
                .filter(why -> !hand.pinned().contains(why.movement()))
                .filter(why -> hand.kept().keySet().stream()
                        .noneMatch(item -> item.movement().equals(why.movement())))
                .filter(why -> catalogue.movement(why.movement()).orElseThrow().kind() == Kind.STRENGTH)
                .sorted(Comparator.comparingInt(Why::behind).thenComparing(Why::movement))
                .map(Why::movement)
                .toList();
        List<Set<String>> changes = new ArrayList<>();
        for (int from = 0; from < movable.size(); from += CHANGES) {
            changes.add(Set.copyOf(movable.subList(from, Math.min(movable.size(), from + CHANGES))));
        }
        return changes;
    }

    private Week told(Map<DayOfWeek, Composed> sessions, int days) {
        List<Session> made = sessions.values().stream()
                .flatMap(each -> each instanceof Composed.Made one ? Stream.of(one.session()) : Stream.empty())
                .toList();
        Map<Purpose, Integer> worked = new LinkedHashMap<>();
        for (Purpose group : Purpose.values()) {
            if (group.muscleGroup()) {
                worked.put(group, (int)
                        made.stream().filter(each -> strengthens(each, group)).count());
            }
        }
        int balance = days(made, Kind.BALANCE);
        int strength = days(made, Kind.STRENGTH);
        return new Week(
                sessions,
                worked,
                balance,
                strength,
                Activity.of(catalogue, made),
                shortOf(worked, balance, strength, days));
    }

    private int days(List<Session> sessions, Kind kind) {
        return (int) sessions.stream()
                .filter(session -> session.items()
                        .anyMatch(item -> catalogue
                                        .movement(item.movement())
                                        .orElseThrow()
                                        .kind()
                                == kind))
                .count();
    }

    private boolean strengthens(Session session, Purpose group) {
        return session.items()
                .map(item -> catalogue.variant(item.variant()).orElseThrow())
                .anyMatch(variant -> catalogue.movementOf(variant).kind() == Kind.STRENGTH
                        && variant.purposes().weight(group) >= Option.WORKED);
    }

    private static List<String> shortOf(Map<Purpose, Integer> worked, int balance, int strength, int days) {
        List<String> lines = new ArrayList<>();
        worked.forEach((group, on) -> {
            if (on < GROUP_DAYS) {
                lines.add("Strength for the %s on %d of at least %d days%s."
                        .formatted(Asking.plain(group), on, GROUP_DAYS, why(days, GROUP_DAYS, on)));
            }
        });
        if (balance < BALANCE_DAYS) {
            lines.add("Balance on %d of at least %d days%s."
                    .formatted(balance, BALANCE_DAYS, why(days, BALANCE_DAYS, balance)));
        }
        if (strength < BALANCE_DAYS) {
            lines.add("Strength on %d of at least %d days%s."
                    .formatted(strength, BALANCE_DAYS, why(days, BALANCE_DAYS, strength)));
        }
        return lines;
    }

    private static String why(int days, int asked, int reached) {
        return days < asked && reached == days ? ", because there are only %d".formatted(days) : "";
    }
}
