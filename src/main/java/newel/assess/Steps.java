package newel.assess;

import java.math.BigDecimal;
import java.util.List;

/** Points by time: the first step that the time lies under. */
record Steps(List<Step> steps) {

    /** @param included whether the time itself still earns the points */
    record Step(int points, BigDecimal seconds, boolean included) {}

    /** 0 beyond the last step. */
    int of(BigDecimal seconds) {
        return steps.stream()
                .filter(step -> seconds.compareTo(step.seconds()) < (step.included() ? 1 : 0))
                .mapToInt(Step::points)
                .findFirst()
                .orElse(0);
    }
}
