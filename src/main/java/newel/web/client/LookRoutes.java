package newel.web.client;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import newel.client.Client;
import newel.client.ClientId;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.Typed;

/** Keeps who is drawn in a client's pictures. */
public final class LookRoutes implements Routes {
    private static final String AT = "/clients/{client}/look";

    private final Pages pages;
    private final Stores stores;
    private final ClientPages clientPages;

    public LookRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.clientPages = new ClientPages(stores, practice);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post(AT, ctx -> keep(ctx, Typed.of(ctx).one(LookChoice.FIELD)));
        routes.post(AT + "/{look}", ctx -> keep(ctx, ctx.pathParam("look")));
    }

    private void keep(Context ctx, String said) {
        Client client =
                stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
        if (!LookChoice.offers(said)) {
            pages.refuse(ctx, ClientPages.TEMPLATE, clientPages.page(client, LookChoice.unknown()));
            return;
        }
        String look = LookChoice.stored(said);
        stores.clients().draw(client.id(), look);
        String base = "/clients/" + client.id().value();
        String undo = base + "/look/" + LookChoice.said(client.look());
        Note.leave(ctx, "Pictures now show " + LookChoice.words(look) + ".", look.equals(client.look()) ? "" : undo);
        ctx.redirect(base);
    }
}
