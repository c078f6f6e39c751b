package newel.web.program;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import newel.program.Proposal;
import newel.program.Version;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Practice;
import newel.web.Routes;

/** Makes an older version the newest again, if today's limits allow all of it. */
public final class ReturnRoutes implements Routes {
    private final Stores stores;
    private final Practice practice;
    private final Knowing knowing;

    public ReturnRoutes(Stores stores, Practice practice) {
        this.stores = stores;
        this.practice = practice;
        this.knowing = new Knowing(stores, practice);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post(Knowing.AT + "/versions/{number}/return", this::back);
    }

    private void back(Context ctx) {
        Known known = knowing.known(ctx);
        Version old = Knowing.version(ctx, known).orElseThrow(NotFoundResponse::new);
        Version next = old.again(known.program().newest(), practice.today());
        boolean fits = Proposal.of(practice.catalogue(), old, known.suiting()).nothing();
        if (!fits) {
            Note.leave(
                    ctx,
                    "Version " + old.number()
                            + " asks for more than today's limits allow. The program stays as it is.");
        } else if (stores.programs().add(known.program().id(), next)) {
            Note.leave(ctx, "As version " + old.number() + " was. This is version " + next.number() + ".");
        } else {
            Note.leave(ctx, "The program was changed in the meantime. This is how it is now.");
        }
        ctx.redirect(Knowing.base(known.client()));
    }
}
