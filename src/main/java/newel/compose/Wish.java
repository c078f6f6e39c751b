package newel.compose;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import newel.catalogue.Purpose;
import newel.catalogue.Purposes;

/**
 * What is wanted of a session.
 *
 * @param goals purposes of the goals, most wanted first
 * @param minutes the most that a session may take
 * @param recent how often each movement was done of late, by id
 * @param places where each movement stood in the session before this one, by id, as {@link Place#names} says
 * @param hand what the instructor has decided
 * @param groups muscle groups that have to be worked
 * @param hard muscle groups that may be worked hard; the others have had or will have hard work within 48 hours
 */
public record Wish(
        List<Purposes> goals,
        int minutes,
        Levels levels,
        Map<String, Integer> recent,
        Map<String, String> places,
        Hand hand,
        Set<Purpose> groups,
        Set<Purpose> hard) {
    private static final Set<Purpose> MUSCLES = muscles();

    public Wish {
        goals = List.copyOf(goals);
        recent = Map.copyOf(recent);
        places = Map.copyOf(places);
        groups = Set.copyOf(groups);
        hard = Set.copyOf(hard);
    }

    public static Wish of(List<Purposes> goals, int minutes, Levels levels) {
        return new Wish(goals, minutes, levels, Map.of(), Map.of(), Hand.FREE, MUSCLES, MUSCLES);
    }

    private static Set<Purpose> muscles() {
        Set<Purpose> muscles = EnumSet.allOf(Purpose.class);
        muscles.removeIf(purpose -> !purpose.muscleGroup());
        return Set.copyOf(muscles);
    }

    public Wish withHand(Hand other) {
        return new Wish(goals, minutes, levels, recent, places, other, groups, hard);
    }

    public Wish withMinutes(int other) {
        return new Wish(goals, other, levels, recent, places, hand, groups, hard);
    }

    public Wish withRecent(Map<String, Integer> other) {
        return new Wish(goals, minutes, levels, other, places, hand, groups, hard);
    }

    /** As like this session as may be: an order is learned. */
    public Wish after(Session before) {
        return new Wish(goals, minutes, levels, recent, Place.names(before), hand, groups, hard);
    }

    public Wish withGroups(Set<Purpose> worked, Set<Purpose> workedHard) {
        return new Wish(goals, minutes, levels, recent, places, hand, worked, workedHard);
    }

    int seconds() {
        return 60 * minutes;
    }

    /** How well something serves the goals, 0 to 1; the first goal counts most. */
    double serves(Purposes purposes) {
        double sum = 0;
        double most = 0;
        for (int i = 0; i < goals.size(); i++) {
            double weight = 1.0 / (1 + i);
            sum += weight * goals.get(i).nearness(purposes);
            most += weight;
        }
        return most == 0 ? 0 : sum / most;
    }
}
