package newel.assess;

import java.util.List;
import java.util.Optional;
import newel.client.Measured;
import newel.client.Quantity;

/**
 * One result with everything that the held tables say about it.
 *
 * @param measured as it was entered
 * @param score what is compared: arms used where they must not be make it 0, a timed walk becomes a speed
 * @param verdicts in the order of the tables; the first that has a figure is the headline
 */
public record Result(Guide guide, Measured measured, Quantity score, List<Verdict> verdicts) {

    public Optional<Verdict> headline() {
        return verdicts.stream()
                .filter(verdict -> !(verdict instanceof Verdict.NoNorm))
                .findFirst()
                .or(() -> verdicts.stream().findFirst());
    }

    public boolean flagged() {
        return verdicts.stream().anyMatch(Verdict::flagged);
    }

    public List<Verdict> flags() {
        return verdicts.stream().filter(Verdict::flagged).toList();
    }

    /** The flags that start the easy forms; they are what to look at first. */
    public List<Verdict> easyFlags() {
        return Assessing.easy(this).toList();
    }
}
