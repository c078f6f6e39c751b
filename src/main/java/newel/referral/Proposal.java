package newel.referral;

import java.util.List;
import newel.screen.Urgency;
import newel.source.Finding;

/**
 * What Newel would hand over today, and how soon.
 *
 * @param findings why; the rules behind them are for the instructor, not for the paper
 */
public record Proposal(
        Urgency urgency, Addressee to, String reason, List<Finding> findings, String question, String meanwhile) {

    /** For a question of the instructor's own. */
    public static final Proposal OWN = new Proposal(
            Urgency.ROUTINE,
            Addressee.OWN_DOCTOR,
            "",
            List.of(),
            "What should this person not do when exercising at home?",
            "The program goes on as it is.");
}
