package newel.compose;

import java.util.List;
import newel.catalogue.Purposes;

/**
 * What the person wants of a session.
 *
 * @param goals purposes of the goals, most wanted first
 * @param minutes the most that a session may take
 */
public record Wish(List<Purposes> goals, int minutes, Level level) {
    public Wish {
        goals = List.copyOf(goals);
    }

    /** How well a movement serves the goals, 0 to 1; the first goal counts most. */
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
