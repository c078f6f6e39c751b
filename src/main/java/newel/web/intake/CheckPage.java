package newel.web.intake;

import java.util.List;
import newel.web.form.Faults;

/** Everything that was answered, to look over before it counts. */
public record CheckPage(
        String base, String name, List<IntakePage.Mark> marks, List<Part> parts, Faults faults, boolean whole) {
    public record Part(Step step, List<Answered> answers) {}

    public record Answered(String question, String answer) {}
}
