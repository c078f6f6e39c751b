package newel.limit;

import java.time.LocalDate;
import java.util.List;

/**
 * What was logged about a person.
 *
 * @param preset id of the preset it came from, or empty for limits of one's own
 * @param words what was said, in the person's or the clinician's words
 * @param review when to look at it again, or null
 * @param limits its consequences, tightened or loosened from the preset's
 */
public record Limitation(
        String id,
        String preset,
        String words,
        Sided side,
        Source source,
        LocalDate since,
        LocalDate review,
        List<Limit> limits,
        List<String> cautions) {
    public Limitation withId(String other) {
        return new Limitation(other, preset, words, side, source, since, review, limits, cautions);
    }

    /** The same preset on the same side; limits of one's own are the same when they ask the same. */
    public boolean saysTheSame(Limitation other) {
        return preset.equals(other.preset) && side == other.side && (!preset.isEmpty() || limits.equals(other.limits));
    }

    public enum Source {
        CLIENT,
        INSTRUCTOR,
        CLINICIAN
    }
}
