package newel.web.referral;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import newel.referral.Consent;
import newel.referral.Fact;
import newel.referral.Letter;
import newel.referral.Note;
import newel.referral.Reply;
import newel.referral.Stage;
import newel.source.Finding;
import newel.web.client.ClientHeader;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Faults;
import newel.web.form.Typed;

/**
 * One note, at whatever stage it is.
 *
 * @param because what screening found, with its rules, for the instructor
 * @param warnings what to look at before it goes out
 * @param stillWaits exercise waits although there is an answer
 * @param history what was done with it, oldest first
 */
public record NotePage(
        ClientHeader header,
        String path,
        Note note,
        LocalDate today,
        Asking asking,
        List<Group> groups,
        boolean emergency,
        List<Finding> because,
        Letter letter,
        List<String> warnings,
        List<Ask> replyAsks,
        List<Ask> limitAsks,
        boolean stillWaits,
        List<String> history) {

    public record Group(String name, List<Tick> ticks) {
        static List<Group> of(List<Fact> facts, Typed typed) {
            List<Group> groups = new ArrayList<>();
            for (Fact.Part part : Fact.Part.values()) {
                List<Tick> ticks = facts.stream()
                        .filter(each -> each.part() == part)
                        .map(each -> new Tick(each, typed.has(DraftForm.FACTS, each.key())))
                        .toList();
                if (!ticks.isEmpty()) {
                    groups.add(new Group(part.words(), ticks));
                }
            }
            return groups;
        }
    }

    public record Tick(Fact fact, boolean ticked) {}

    public Faults faults() {
        return asking.faults();
    }

    public String title() {
        return "Referral note, " + note.draft().to().within();
    }

    public NoteListPage.Line line() {
        return NoteListPage.Line.of(path, note, today);
    }

    public boolean drafted() {
        return note.stage() instanceof Stage.Drafted;
    }

    public boolean waitsForAnswer() {
        return note.stage() instanceof Stage.Sent;
    }

    public boolean asked() {
        return !(note.consent() instanceof Consent.NotAsked);
    }

    /** The answer; null before. */
    public Reply reply() {
        return note.stage() instanceof Stage.Answered answered ? answered.reply() : null;
    }

    public List<Ask> consentAsks() {
        return ConsentForm.asks(asking, note.draft());
    }

    public List<Ask> before() {
        return DraftForm.before(asking);
    }

    public List<Ask> after() {
        return DraftForm.after(asking, note.draft());
    }

    public List<Ask> sendAsks() {
        return SendForm.asks(asking);
    }

    /** Whether the part on a limit was begun, and so stands open. */
    public boolean limitBegun() {
        return !asking.typed().one(ReplyForm.LIMIT + "what").isEmpty();
    }
}
