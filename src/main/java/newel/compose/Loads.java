package newel.compose;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import newel.catalogue.Purpose;

/**
 * On which days of a week a muscle group may be worked hard: as many as there are with 48 hours between any two, the week
 * being a circle. Where days follow each other, the lower body takes the earlier ones and the upper body the later ones, so
 * that the two take turns.
 */
record Loads(Map<Purpose, Set<DayOfWeek>> hard) {
    private static final int WEEK = 7;
    private static final int REST_DAYS = 2;
    private static final Set<Purpose> LOWER = EnumSet.of(Purpose.LEGS, Purpose.HIPS, Purpose.ABDOMEN);

    static Loads over(Set<DayOfWeek> days) {
        List<DayOfWeek> sorted = days.stream().sorted().toList();
        Map<Purpose, Set<DayOfWeek>> hard = new EnumMap<>(Purpose.class);
        for (Purpose group : Purpose.values()) {
            if (group.muscleGroup()) {
                hard.put(group, best(LOWER.contains(group) ? sorted : sorted.reversed()));
            }
        }
        return new Loads(hard);
    }

    /** Every subset of at most seven days; of those that keep the rest the largest, of equal ones the first in this order. */
    private static Set<DayOfWeek> best(List<DayOfWeek> days) {
        List<DayOfWeek> best = List.of();
        for (int subset = 0; subset < 1 << days.size(); subset++) {
            List<DayOfWeek> chosen = new ArrayList<>();
            for (int i = 0; i < days.size(); i++) {
                if ((subset >> i & 1) == 1) {
                    chosen.add(days.get(i));
                }
            }
            if (chosen.size() > best.size() && rested(chosen)) {
                best = chosen;
            }
        }
        return Set.copyOf(best);
    }

    static boolean rested(List<DayOfWeek> days) {
        for (DayOfWeek one : days) {
            for (DayOfWeek other : days) {
                int after = Math.floorMod(other.ordinal() - one.ordinal(), WEEK);
                if (one != other && (after < REST_DAYS || WEEK - after < REST_DAYS)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The groups that may be worked hard on a day. */
    Set<Purpose> on(DayOfWeek day) {
        Set<Purpose> groups = EnumSet.noneOf(Purpose.class);
        hard.forEach((group, days) -> {
            if (days.contains(day)) {
                groups.add(group);
            }
        });
        return groups;
    }
}
