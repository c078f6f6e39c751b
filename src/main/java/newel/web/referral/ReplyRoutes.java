package newel.web.referral;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import newel.client.Answer;
import newel.client.Client;
import newel.client.ClientId;
import newel.limit.Called;
import newel.limit.Limitation;
import newel.referral.Effect;
import newel.referral.Note;
import newel.referral.NoteId;
import newel.referral.Reply;
import newel.referral.Stage;
import newel.store.Ids;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** The answer to a note, and what it changes: the clearance, and limits. */
public final class ReplyRoutes implements Routes {
    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final NotePages notes;
    private final ReplyForm form;

    public ReplyRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.notes = new NotePages(stores, practice);
        this.form = new ReplyForm(practice.presets());
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post(ReferralRoutes.AT + "/{note}/reply", this::keep);
    }

    private void keep(Context ctx) {
        Client client =
                stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
        Note note = stores.referrals()
                .find(client.id(), new NoteId(ctx.pathParam("note")))
                .orElseThrow(NotFoundResponse::new);
        if (!(note.stage() instanceof Stage.Sent sent)) {
            throw new NotFoundResponse();
        }
        Typed typed = Typed.of(ctx);
        Parsed<ReplyForm.Came> parsed = form.parse(typed, client, sent, Ids.next(), practice.today());
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, NotePages.ONE, notes.one(client, note, typed, parsed.faults()));
            return;
        }
        take(client, note, parsed.value().get());
        newel.web.Note.leave(ctx, "The answer is kept.");
        ctx.redirect(ReferralRoutes.path(client, note.id()));
    }

    /** Keeps the answer once, and only then changes what it changes. */
    private void take(Client client, Note note, ReplyForm.Came came) {
        Effect effect = Effect.of(came.reply(), client.readiness(), Ids.next());
        List<Limitation> limitations = new ArrayList<>();
        effect.limitation()
                .filter(each -> client.limitations().stream().noneMatch(each::saysTheSame))
                .ifPresent(limitations::add);
        came.limit().ifPresent(limitations::add);
        List<String> lines = new ArrayList<>(effect.lines());
        came.limit().ifPresent(each -> lines.add("Logged: " + Called.of(each) + "."));
        Reply reply = came.reply().with(lines);
        if (!stores.referrals().answer(note.id(), reply)) {
            return;
        }
        stores.clients().save(with(client, effect));
        intakeFollows(client, effect);
        limitations.forEach(each -> stores.limitations().add(client.id(), each));
        stores.audit()
                .write(client.id(), note.id().value(), "Answered by " + reply.who() + ". " + String.join(" ", lines));
    }

    private static Client with(Client c, Effect effect) {
        return new Client(
                c.id(),
                c.profile(),
                c.home(),
                c.wishes(),
                effect.readiness(),
                c.falls(),
                c.vitals(),
                c.measures(),
                c.limitations(),
                c.look());
    }

    /** An intake that is being gone through again must not bring back what was answered before. */
    private void intakeFollows(Client client, Effect effect) {
        stores.drafts()
                .find(client.id())
                .map(Typed::new)
                .ifPresent(draft -> stores.drafts()
                        .keep(
                                client.id(),
                                draft.with(
                                                "readiness-cleared",
                                                typed(effect.readiness().clearedWithinYear()))
                                        .with(
                                                "readiness-signs-cleared",
                                                typed(effect.readiness().symptomsCleared()))
                                        .values()));
    }

    private static String typed(Answer answer) {
        return newel.web.form.Choice.of(answer);
    }
}
