package newel.web.referral;

import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import newel.casefile.CaseWriter;
import newel.client.Client;
import newel.client.ClientId;
import newel.referral.Draft;
import newel.referral.Note;
import newel.referral.NoteId;
import newel.referral.Stage;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** The notes of one client: all of them, and one from its opening to its sending. */
public final class ReferralRoutes implements Routes {
    static final String AT = "/clients/{client}/referrals";

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final NotePages notes;

    public ReferralRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.notes = new NotePages(stores, practice);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT, this::list);
        routes.post(AT, this::open);
        routes.get(AT + "/{note}", this::show);
        routes.post(AT + "/{note}/consent", this::consent);
        routes.post(AT + "/{note}/draft", this::draft);
        routes.post(AT + "/{note}/sending", this::send);
        routes.post(AT + "/{note}/drop", this::drop);
        routes.post(AT + "/{note}/taking-up", this::takeUp);
        routes.get(AT + "/{note}/letter", this::letter);
        routes.get(AT + "/{note}/copy", this::copy);
        routes.get("/clients/{client}/case.json", this::casefile);
    }

    private void list(Context ctx) {
        Client client = client(ctx);
        pages.show(ctx, NotePages.LIST, notes.list(client, notes.proposed(client), new Faults()));
    }

    private void open(Context ctx) {
        Client client = client(ctx);
        Typed typed = Typed.of(ctx);
        Parsed<Draft> parsed = OpenForm.parse(typed, notes.proposal(client));
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, NotePages.LIST, notes.list(client, typed, parsed.faults()));
            return;
        }
        NoteId id = stores.referrals().open(client.id(), parsed.value().get(), practice.today());
        written(client, id, "Begun.");
        ctx.redirect(path(client, id));
    }

    private void show(Context ctx) {
        Client client = client(ctx);
        pages.show(ctx, NotePages.ONE, notes.one(client, note(ctx, client)));
    }

    private void consent(Context ctx) {
        Client client = client(ctx);
        Note note = drafted(ctx, client);
        Typed typed = Typed.of(ctx);
        var parsed = ConsentForm.parse(typed, note.draft(), practice.today());
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, NotePages.ONE, notes.one(client, note, typed, parsed.faults()));
            return;
        }
        stores.referrals().change(note.id(), note.draft(), parsed.value().get());
        written(client, note.id(), "Consent: " + parsed.value().get().line());
        ctx.redirect(path(client, note.id()));
    }

    /** Nothing is ticked before the client was asked. */
    private void draft(Context ctx) {
        Client client = client(ctx);
        Note note = drafted(ctx, client);
        Typed typed = Typed.of(ctx);
        Parsed<Draft> parsed = DraftForm.parse(typed, note, notes.facts(client));
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, NotePages.ONE, notes.one(client, note, typed, parsed.faults()));
            return;
        }
        stores.referrals().change(note.id(), parsed.value().get(), note.consent());
        newel.web.Note.leave(ctx, "Kept. The letter stands below.");
        ctx.redirect(path(client, note.id()) + "#letter");
    }

    private void send(Context ctx) {
        Client client = client(ctx);
        Note note = drafted(ctx, client);
        Typed typed = Typed.of(ctx);
        Parsed<SendForm.Sending> parsed = SendForm.parse(typed, note, notes.letter(client, note), practice.today());
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, NotePages.ONE, notes.one(client, note, typed, parsed.faults()));
            return;
        }
        Stage.Sent sent = notes.sent(client, note, parsed.value().get());
        if (stores.referrals().send(note.id(), sent)) {
            written(
                    client,
                    note.id(),
                    "Sent " + sent.way().words() + " to " + note.draft().readerLine() + ".");
        }
        newel.web.Note.leave(ctx, "The note is kept as sent. Its words can no longer change.");
        ctx.redirect(path(client, note.id()));
    }

    private void drop(Context ctx) {
        Client client = client(ctx);
        Note note = drafted(ctx, client);
        stores.referrals().drop(note.id());
        written(client, note.id(), "Dropped before it was sent.");
        newel.web.Note.leave(ctx, "The note is dropped.", path(client, note.id()) + "/taking-up");
        ctx.redirect(base(client));
    }

    private void takeUp(Context ctx) {
        Client client = client(ctx);
        Note note = note(ctx, client);
        if (stores.referrals().takeUp(note.id())) {
            written(client, note.id(), "Taken up again.");
        }
        ctx.redirect(path(client, note.id()));
    }

    private void letter(Context ctx) {
        Client client = client(ctx);
        pages.show(ctx, "referral/letter.jte", notes.letterPage(client, note(ctx, client)));
    }

    private void copy(Context ctx) {
        Client client = client(ctx);
        pages.show(ctx, "referral/copy.jte", notes.copyPage(client, note(ctx, client)));
    }

    private void casefile(Context ctx) {
        ctx.header("Content-Disposition", "attachment; filename=\"case.json\"");
        ctx.contentType("application/json; charset=utf-8")
                .result(JsonMapper.builder()
                        .build()
                        .valueToTree(CaseWriter.write(client(ctx), practice.today()))
                        .toPrettyString());
    }

    private void written(Client client, NoteId note, String what) {
        stores.audit().write(client.id(), note.value(), what);
    }

    private Note drafted(Context ctx, Client client) {
        Note note = note(ctx, client);
        if (!(note.stage() instanceof Stage.Drafted)) {
            throw new NotFoundResponse();
        }
        return note;
    }

    private Note note(Context ctx, Client client) {
        return stores.referrals()
                .find(client.id(), new NoteId(ctx.pathParam("note")))
                .orElseThrow(NotFoundResponse::new);
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }

    static String base(Client client) {
        return "/clients/" + client.id().value() + "/referrals";
    }

    static String path(Client client, NoteId note) {
        return base(client) + "/" + note.value();
    }
}
