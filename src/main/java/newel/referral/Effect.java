package newel.referral;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.client.Answer;
import newel.client.ReadinessAnswers;
import newel.client.Symptom;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Sided;

/**
 * What an answer changes. It never takes back a red flag: whether that sign is gone is asked of the client again.
 *
 * @param readiness the answers as they stand afterwards
 * @param limitation a limit that the answer brings by itself
 * @param lines the same in words
 */
public record Effect(ReadinessAnswers readiness, Optional<Limitation> limitation, List<String> lines) {
    /** The upper end of moderate on the 0 to 10 effort scale (Nelson et al. 2007, Circulation 116:1094, from memory). */
    private static final int MODERATE = 6;

    /** @param id the key of a limitation that the answer may bring */
    public static Effect of(Reply reply, ReadinessAnswers before, String id) {
        List<String> lines = new ArrayList<>();
        Answer cleared = cleared(reply, before, lines);
        Answer signs = signs(reply, before, lines);
        Optional<Limitation> limitation = reply.clearance() == Reply.Clearance.UP_TO_MODERATE
                ? Optional.of(moderate(id, reply.on()))
                : Optional.empty();
        limitation.ifPresent(each -> lines.add("A limit is added: effort of " + MODERATE + " of 10 at most."));
        if (lines.isEmpty()) {
            lines.add("Nothing changes: the answer does not say whether exercise may go on.");
        }
        return new Effect(with(before, cleared, signs, day(reply, before)), limitation, List.copyOf(lines));
    }

    private static Answer cleared(Reply reply, ReadinessAnswers before, List<String> lines) {
        return switch (reply.clearance()) {
            case GIVEN, UP_TO_MODERATE -> {
                lines.add("A clinician's clearance is noted, " + Days.of(reply.on()) + ".");
                yield Answer.YES;
            }
            case NOT_GIVEN -> {
                lines.add("No clearance: exercise waits.");
                yield Answer.NO;
            }
            case NOT_SAID -> before.clearedWithinYear();
        };
    }

    private static Answer signs(Reply reply, ReadinessAnswers before, List<String> lines) {
        boolean told = !before.symptoms().all(Symptom.class, Answer.YES).isEmpty();
        if (reply.clearance() == Reply.Clearance.NOT_GIVEN) {
            return told ? Answer.NO : before.symptomsCleared();
        }
        if (told && reply.signsSeen() && reply.clearance().goesOn()) {
            lines.add("The signs that were told have been looked at.");
            return Answer.YES;
        }
        return before.symptomsCleared();
    }

    private static LocalDate day(Reply reply, ReadinessAnswers before) {
        return switch (reply.clearance()) {
            case GIVEN, UP_TO_MODERATE -> reply.on();
            case NOT_GIVEN -> null;
            case NOT_SAID -> before.clearedOn();
        };
    }

    private static Limitation moderate(String id, LocalDate on) {
        return new Limitation(
                id,
                "",
                "Light to moderate effort only",
                Sided.BOTH,
                Limitation.Source.CLINICIAN,
                on,
                null,
                List.of(new Limit.EffortAtMost(MODERATE)),
                List.of());
    }

    /** The day of a clearance is that of the answer; who is not cleared has none. */
    private static ReadinessAnswers with(ReadinessAnswers r, Answer cleared, Answer signs, LocalDate on) {
        return new ReadinessAnswers(
                r.regularExercise(),
                r.knownDisease(),
                r.symptoms(),
                r.redFlags(),
                r.wantsVigorous(),
                cleared,
                signs,
                r.pulseLoweringMedicine(),
                r.pulseGuards(),
                r.lowSugarMedicine(),
                on);
    }
}
