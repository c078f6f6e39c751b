package newel.screen;

import java.time.LocalDate;
import java.util.List;
import newel.client.Answer;
import newel.client.ReadinessAnswers;
import newel.source.Finding;

/** Whether this client may begin, and what waits for whom. */
public sealed interface Readiness {
    Row row();

    List<Finding> reasons();

    /**
     * @param felt whether the client feels what was measured at rest
     * @param today a clearance older than twelve months on this day does not count
     */
    static Readiness of(ReadinessAnswers answers, Answer felt, LocalDate today) {
        return new ReadinessDecision(answers, felt, today).decide();
    }

    record Clear(Row row, Intensity intensity) implements Readiness {
        @Override
        public List<Finding> reasons() {
            return List.of();
        }
    }

    /** May begin, no harder than this; the reasons say what waits or is still to be asked. */
    record ClearWithLimits(Row row, Intensity intensity, List<Finding> reasons) implements Readiness {}

    /** Nothing begins yet. Once the answer is there, the work may be this hard. */
    record Wait(Row row, Who who, Intensity afterwards, List<Finding> reasons) implements Readiness {}

    /** Nothing goes on, and what was going on stops. */
    record Stop(Row row, Urgency urgency, List<Finding> reasons) implements Readiness {}
}
