package newel.client;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;

/**
 * What the client wants from a program.
 *
 * @param goals most wanted first
 * @param minutes length of one session, 10 to 60
 */
public record Wishes(List<Goal> goals, int minutes, Set<DayOfWeek> days, Experience experience) {
    public static final int LEAST_MINUTES = 10;
    public static final int MOST_MINUTES = 60;

    public Wishes {
        if (minutes < LEAST_MINUTES || minutes > MOST_MINUTES) {
            throw new IllegalArgumentException("minutes: " + minutes);
        }
    }
}
