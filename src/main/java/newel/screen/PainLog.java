package newel.screen;

import java.math.BigDecimal;
import newel.client.Answer;

/**
 * Pain of one session, each 0 to 10.
 *
 * @param morning the next morning; null until it is told
 * @param usual of a usual morning
 * @param weekRises pain or stiffness is rising from week to week
 * @param atRest more than 5 at rest
 * @param alarming pain at night, new swelling, locking or giving way
 */
public record PainLog(
        PainKind kind,
        BigDecimal during,
        BigDecimal after,
        BigDecimal morning,
        BigDecimal usual,
        Answer weekRises,
        Answer atRest,
        Answer alarming) {

    public PainLog withMorning(BigDecimal told) {
        return new PainLog(kind, during, after, told, usual, weekRises, atRest, alarming);
    }

    /** Told, and at least one over a usual morning. */
    boolean notSettled() {
        return morning != null && morning.compareTo(usual.add(BigDecimal.ONE)) >= 0;
    }

    BigDecimal most() {
        return during.max(after);
    }
}
