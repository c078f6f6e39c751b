package newel.web.intake;

import java.util.List;

/**
 * Everything that was answered, to look over before it counts.
 *
 * @param urgent what comes before anything else, or null
 */
public record CheckPage(
        String base,
        String name,
        List<IntakePage.Mark> marks,
        List<Part> parts,
        List<Open> open,
        boolean whole,
        UrgentPage urgent) {
    /** Something that keeps the intake from being finished, and where to mend it. */
    public record Open(String path, String message) {}

    public record Part(Step step, List<Answered> answers) {}

    public record Answered(String question, String answer) {}
}
