package newel.web.referral;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.client.Client;
import newel.practice.Settings;
import newel.referral.ClientCopy;
import newel.referral.DiagnosticWords;
import newel.referral.Draft;
import newel.referral.Fact;
import newel.referral.Facts;
import newel.referral.Letter;
import newel.referral.Letters;
import newel.referral.Note;
import newel.referral.Proposal;
import newel.referral.Referral;
import newel.referral.Stage;
import newel.screen.Permission;
import newel.screen.Screening;
import newel.screen.Urgency;
import newel.store.AuditStore;
import newel.store.Stores;
import newel.web.Practice;
import newel.web.client.ClientHeader;
import newel.web.form.Asking;
import newel.web.form.Faults;
import newel.web.form.Typed;

/** Makes the pages about notes. */
final class NotePages {
    static final String LIST = "referral/list.jte";
    static final String ONE = "referral/note.jte";

    private final Stores stores;
    private final Practice practice;
    private final ReplyForm replies;

    NotePages(Stores stores, Practice practice) {
        this.stores = stores;
        this.practice = practice;
        this.replies = new ReplyForm(practice.presets());
    }

    Screening screening(Client client) {
        return practice.screening(client);
    }

    Proposal proposal(Client client) {
        return Referral.of(screening(client)).orElse(Proposal.OWN);
    }

    Typed proposed(Client client) {
        return OpenForm.fill(proposal(client));
    }

    List<Fact> facts(Client client) {
        return Facts.of(client, screening(client), practice.guides());
    }

    Letter letter(Client client, Note note) {
        return note.sent()
                .map(Stage.Sent::letter)
                .orElseGet(() -> Letters.write(
                        note, client.profile(), facts(client), stores.practice().settings(), practice.today()));
    }

    ClientCopy copy(Client client, Note note) {
        return note.sent()
                .map(Stage.Sent::copy)
                .orElseGet(() -> ClientCopy.of(
                        note.draft(),
                        letter(client, note),
                        client.profile(),
                        stores.practice().settings()));
    }

    /** What goes out is dated with the day on which it goes out. */
    Stage.Sent sent(Client client, Note note, SendForm.Sending sending) {
        Optional<Settings> settings = stores.practice().settings();
        Letter letter = Letters.write(note, client.profile(), facts(client), settings, sending.on());
        ClientCopy copy = ClientCopy.of(note.draft(), letter, client.profile(), settings);
        return new Stage.Sent(sending.on(), sending.way(), letter, copy);
    }

    NoteListPage list(Client client, Typed typed, Faults faults) {
        Optional<Proposal> proposal = Referral.of(screening(client));
        List<NoteListPage.Line> lines = stores.referrals().of(client.id()).stream()
                .map(each -> NoteListPage.Line.of(ReferralRoutes.path(client, each.id()), each, practice.today()))
                .toList();
        return new NoteListPage(
                header(client),
                ReferralRoutes.base(client),
                proposal.orElse(null),
                lines,
                OpenForm.asks(new Asking(typed, faults)),
                faults);
    }

    NotePage one(Client client, Note note) {
        return one(client, note, Typed.NOTHING, new Faults());
    }

    /** @param typed laid over what is kept, where a form was refused */
    NotePage one(Client client, Note note, Typed typed, Faults faults) {
        Asking ask = new Asking(filled(client, note).with(typed), faults);
        Letter letter = letter(client, note);
        return new NotePage(
                header(client),
                ReferralRoutes.path(client, note.id()),
                note,
                practice.today(),
                ask,
                NotePage.Group.of(facts(client), ask.typed()),
                note.draft().urgency() == Urgency.EMERGENCY,
                Referral.of(screening(client)).map(Proposal::findings).orElse(List.of()),
                letter,
                warnings(note, letter),
                replies.asks(ask, client),
                replies.limitAsks(ask),
                stillWaits(client, note),
                stores.audit().of(note.id().value()).stream()
                        .map(AuditStore.Line::dated)
                        .toList());
    }

    private Typed filled(Client client, Note note) {
        return ConsentForm.fill(note.draft(), client.profile().name(), practice.today())
                .with(DraftForm.fill(note.draft()))
                .with(SendForm.fill(practice.today()))
                .with(ReplyForm.fill(practice.today()));
    }

    /** What the instructor should look at before the note goes out. */
    private List<String> warnings(Note note, Letter letter) {
        List<String> warnings = new ArrayList<>();
        Draft draft = note.draft();
        if (stores.practice().settings().isEmpty()) {
            warnings.add("The letter does not say how to reach you: set your practice's name and phone first.");
        }
        List<String> named = DiagnosticWords.in(draft.reason() + " " + draft.question() + " " + draft.meanwhile());
        if (!named.isEmpty()) {
            warnings.add(
                    "“%s” names a disease. Write what you saw, or who named it.".formatted(String.join("”, “", named)));
        }
        if (draft.ticked().isEmpty()) {
            warnings.add("Nothing is ticked yet: beside the name and the reason, the letter says nothing.");
        }
        if (!letter.fitsOnePage()) {
            warnings.add("The letter is longer than one page. Untick what the reader can do without.");
        }
        return List.copyOf(warnings);
    }

    /** After an answer: a sign that the answer cannot take back. */
    private boolean stillWaits(Client client, Note note) {
        return note.stage() instanceof Stage.Answered && screening(client).permission() != Permission.START;
    }

    LetterPage letterPage(Client client, Note note) {
        return new LetterPage(letter(client, note), note.sent().isPresent(), ReferralRoutes.path(client, note.id()));
    }

    CopyPage copyPage(Client client, Note note) {
        return new CopyPage(copy(client, note), note.sent().isPresent(), ReferralRoutes.path(client, note.id()));
    }

    private ClientHeader header(Client client) {
        return ClientHeader.of(client, practice);
    }
}
