package newel.compose;

import java.util.Map;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;

/**
 * Where to begin, by purpose: measures may say that legs start lower than arms.
 *
 * @param usual where nothing is known of a purpose
 */
public record Levels(Level usual, Map<Purpose, Level> of) {
    public Levels {
        of = Map.copyOf(of);
    }

    public static Levels all(Level level) {
        return new Levels(level, Map.of());
    }

    public Level of(Purpose purpose) {
        return of.getOrDefault(purpose, usual);
    }

    /** The lowest over the main purposes: when in doubt, easier. */
    Level of(Movement movement) {
        Level lowest = null;
        for (Purpose purpose : Purpose.values()) {
            if (movement.purposes().weight(purpose) >= Stance.MAIN) {
                lowest = lowest == null || of(purpose).compareTo(lowest) < 0 ? of(purpose) : lowest;
            }
        }
        return lowest == null ? usual : lowest;
    }
}
