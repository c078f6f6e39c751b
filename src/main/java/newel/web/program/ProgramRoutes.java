package newel.web.program;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import newel.client.Client;
import newel.program.Drafted;
import newel.program.Program;
import newel.program.Version;
import newel.screen.Permission;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;

/** A client's program: the first draft and reading its versions. */
public final class ProgramRoutes implements Routes {
    private static final int REFUSED = 422;

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
            pages.show(ctx, "program/none.jte", NoProgramPage.of(client, practice, List.of()));
        } else {
            keeping.show(
                    ctx, knowing.known(client, program.get()), program.get().newest(), Refusal.NONE);
        }
    }

    private void version(Context ctx) {
        Known known = knowing.known(ctx);
        Version version = Knowing.version(ctx, known).orElseThrow(NotFoundResponse::new);
        keeping.show(ctx, known, version, Refusal.NONE);
    }

    /** The first draft. */
    private void draft(Context ctx) {
        Client client = knowing.client(ctx);
        if (stores.programs().of(client.id()).isPresent()) {
            Note.leave(ctx, "There is a program already.");
        } else if (practice.screening(client).permission() == Permission.NOTHING) {
            Note.leave(ctx, "Nothing was drafted: no exercise may be done now.");
        } else {
            switch (practice.drafting(client).first()) {
                case Drafted.Made made -> {
                    stores.programs().begin(client.id(), made.version());
                    Note.leave(ctx, "Here is a first draft. Everything in it can be changed.");
                }
                case Drafted.Refused refused -> {
                    ctx.status(REFUSED);
                    pages.show(ctx, "program/none.jte", NoProgramPage.of(client, practice, refused.conflict()));
                    return;
                }
            }
        }
        ctx.redirect(Knowing.base(client));
    }
}
