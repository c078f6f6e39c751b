package newel.web.program;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import newel.client.Client;
import newel.compose.Suiting;
import newel.program.Drafting;
import newel.program.Program;
import newel.program.Version;
import newel.screen.Permission;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;

/** A client's program: drafting it and reading its versions. */
public final class ProgramRoutes implements Routes {
    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final Knowing knowing;
    private final Keeping keeping;

    public ProgramRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.knowing = new Knowing(stores, practice);
        this.keeping = new Keeping(pages, knowing);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(Knowing.AT, this::newest);
        routes.post(Knowing.AT, this::draft);
        routes.get(Knowing.AT + "/versions/{number}", this::version);
    }

    private void newest(Context ctx) {
        Client client = knowing.client(ctx);
        Optional<Program> program = stores.programs().of(client.id());
        if (program.isEmpty()) {
            pages.show(ctx, "program/none.jte", NoProgramPage.of(client, practice));
        } else {
            keeping.show(
                    ctx, knowing.known(client, program.get()), program.get().newest(), Refusal.NONE);
        }
    }

    private void version(Context ctx) {
        Known known = knowing.known(ctx);
        String number = ctx.pathParam("number");
        Version version = known.program()
                .version(number.matches("\\d{1,6}") ? Integer.parseInt(number) : 0)
                .orElseThrow(NotFoundResponse::new);
        keeping.show(ctx, known, version, Refusal.NONE);
    }

    /** The first draft, or a new one that becomes the next version. */
    private void draft(Context ctx) {
        Client client = knowing.client(ctx);
        if (practice.screening(client).permission() == Permission.NOTHING) {
            Note.leave(ctx, "Nothing was drafted: no exercise may be done now.");
            ctx.redirect(Knowing.base(client));
            return;
        }
        Suiting suiting = practice.suiting(client);
        Optional<Program> program = stores.programs().of(client.id());
        if (program.isEmpty()) {
            Version first = Drafting.first(practice.catalogue(), client, suiting, practice.today());
            if (!empty(ctx, first)) {
                stores.programs().begin(client.id(), first);
                Note.leave(ctx, "Here is a first draft. Everything in it can be changed.");
            }
        } else {
            Version before = program.get().newest();
            Version next = Drafting.again(practice.catalogue(), client, suiting, practice.today(), before);
            if (!empty(ctx, next)) {
                stores.programs().add(program.get().id(), next);
                Note.leave(ctx, "Drafted anew. Version " + before.number() + " can still be read below.");
            }
        }
        ctx.redirect(Knowing.base(client));
    }

    /** A draft in which nothing could be put together is not kept. */
    private static boolean empty(Context ctx, Version drafted) {
        boolean empty = drafted.items().isEmpty();
        if (empty) {
            Note.leave(
                    ctx,
                    "Nothing was drafted: what fits does not come to a session. Give more minutes, more things at home, or"
                            + " look again at the limits.");
        }
        return empty;
    }
}
