package newel.web.intake;

import java.util.List;
import newel.web.form.Ask;
import newel.web.form.Faults;

/**
 * One step of an intake.
 *
 * @param added limitations taken down so far in this intake
 * @param whole the client was saved before; the intake is being changed
 */
public record IntakePage(
        String base,
        String name,
        Step step,
        List<Mark> marks,
        List<Ask> asks,
        Faults faults,
        List<Added> added,
        boolean whole) {

    /** A step in the line on top, and how many of its questions are still open. */
    public record Mark(Step step, boolean here, int open) {}

    public record Added(int index, String words) {}

    public String title() {
        return "Step " + (step.ordinal() + 1) + " of " + Step.values().length + ": " + step.title();
    }
}
