package newel.compose;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import newel.catalogue.Catalogue;
import newel.catalogue.Kind;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;

/**
 * What a week of sessions comes to beside the guideline for 65 and over (WHO 2020).
 *
 * @param sets by muscle group, and for balance: on which day how many sets work it; days without any are absent
 * @param strengthDays days with strength work
 * @param activity minutes against the guideline
 * @param shortOf what of the guideline the week does not reach, as sentences
 */
public record Reached(
        Map<Purpose, SortedMap<DayOfWeek, Integer>> sets, int strengthDays, Activity activity, List<String> shortOf) {
    /** Bull et al. 2020 (WHO): all major muscle groups on 2 days or more, balance with strength on 3 or more. */
    public static final int GROUP_DAYS = 2;

    public static final int BALANCE_DAYS = 3;

    public Reached {
        sets = Map.copyOf(sets);
        shortOf = List.copyOf(shortOf);
    }

    public static Reached of(Catalogue catalogue, SortedMap<DayOfWeek, Session> sessions) {
        Map<Purpose, SortedMap<DayOfWeek, Integer>> sets = new EnumMap<>(Purpose.class);
        for (Purpose purpose : Purpose.values()) {
            if (purpose != Purpose.PULSE) {
                sets.put(purpose, sets(catalogue, sessions, purpose));
            }
        }
        int strength = (int) sessions.values().stream()
                .filter(session -> session.items()
                        .anyMatch(item -> catalogue
                                        .movement(item.movement())
                                        .orElseThrow()
                                        .kind()
                                == Kind.STRENGTH))
                .count();
        return new Reached(
                sets, strength, Activity.of(catalogue, sessions.values()), shortOf(sets, strength, sessions.size()));
    }

    private static SortedMap<DayOfWeek, Integer> sets(
            Catalogue catalogue, SortedMap<DayOfWeek, Session> sessions, Purpose purpose) {
        SortedMap<DayOfWeek, Integer> byDay = new TreeMap<>();
        sessions.forEach((day, session) -> {
            int sets = session.blocks().stream()
                    .mapToInt(block -> block.items().stream()
                            .filter(item -> works(catalogue, item, purpose))
                            .mapToInt(item ->
                                    block.passes() * Math.max(1, item.dose().sets()))
                            .sum())
                    .sum();
            if (sets > 0) {
                byDay.put(day, sets);
            }
        });
        return byDay;
    }

    /** A group is worked by strength work that has it as a main or strong helping group. */
    private static boolean works(Catalogue catalogue, Item item, Purpose purpose) {
        Variant variant = catalogue.variant(item.variant()).orElseThrow();
        Kind kind = catalogue.movementOf(variant).kind();
        return purpose == Purpose.BALANCE
                ? kind == Kind.BALANCE
                : kind == Kind.STRENGTH && variant.purposes().weight(purpose) >= Option.WORKED;
    }

    private static List<String> shortOf(Map<Purpose, SortedMap<DayOfWeek, Integer>> sets, int strength, int days) {
        List<String> lines = new ArrayList<>();
        sets.forEach((purpose, on) -> {
            boolean balance = purpose == Purpose.BALANCE;
            String what = balance ? "Balance" : "Strength for the " + Asking.plain(purpose);
            line(lines, what, on.size(), balance ? BALANCE_DAYS : GROUP_DAYS, days);
        });
        line(lines, "Strength", strength, BALANCE_DAYS, days);
        return lines;
    }

    private static void line(List<String> lines, String what, int on, int asked, int days) {
        if (on < asked) {
            String why = days < asked && on == days ? ", because there are only %d".formatted(days) : "";
            lines.add("%s on %d of at least %d days%s.".formatted(what, on, asked, why));
        }
    }

    /** Days on which a group, or balance, is worked. */
    public int days(Purpose purpose) {
        return sets.get(purpose).size();
    }

    /** Whether the guideline's days are reached. */
    public boolean enough(Purpose purpose) {
        return days(purpose) >= (purpose == Purpose.BALANCE ? BALANCE_DAYS : GROUP_DAYS);
    }
}
