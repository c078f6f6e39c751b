package newel.referral;

import java.util.List;
import newel.screen.Urgency;

/**
 * What the instructor has chosen for a note so far.
 *
 * @param reader name of the person or place, empty when not known
 * @param reason goes on after "because"
 * @param ticked keys of the facts that go in; none at first
 * @param question one question
 * @param meanwhile what goes on until the answer is there
 * @param phoned who was also told by phone, and when; empty when nobody was
 */
public record Draft(
        Urgency urgency,
        Addressee to,
        String reader,
        String reason,
        List<String> ticked,
        String question,
        String meanwhile,
        String phoned) {
    static final String NOTHING = "No exercise from us until your answer is there.";
    private static final String AFTERWARDS =
            "When you have seen this person: may they exercise at home again, and what should they not do?";

    public Draft {
        ticked = List.copyOf(ticked);
    }

    /** Nothing is ticked: who the client is and why is all that stands in it. */
    public static Draft of(Urgency urgency, Addressee to, Proposal proposal) {
        String question = urgency == Urgency.EMERGENCY ? AFTERWARDS : proposal.question();
        String meanwhile = urgency == Urgency.ROUTINE ? proposal.meanwhile() : NOTHING;
        return new Draft(urgency, to, "", proposal.reason(), List.of(), question, meanwhile, "");
    }

    public String readerLine() {
        return reader.isEmpty() ? to.words() : reader + ", " + to.within();
    }
}
