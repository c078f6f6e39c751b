package newel.web.measure;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import newel.assess.Guide;
import newel.assess.Guides;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.Measure;
import newel.client.Measured;
import newel.screen.Screening;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.client.ClientHeader;
import newel.web.form.Choice;
import newel.web.form.DateBoxes;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** A client's tests: their results, and taking one down. */
public final class MeasureRoutes implements Routes {
    private static final String AT = "/clients/{client}/measures";
    private static final String TEST = "measure/test.jte";

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;

    public MeasureRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT, this::results);
        routes.get(AT + "/{test}", this::ask);
        routes.post(AT + "/{test}", this::keep);
        routes.post(AT + "/results/{result}/back", this::takeBack);
        routes.post(AT + "/results/{result}/again", this::giveBack);
    }

    private void results(Context ctx) {
        Client client = client(ctx);
        pages.show(
                ctx,
                "measure/results.jte",
                MeasuresPage.of(client, stores.measured().kept(client.id()), practice));
    }

    private void ask(Context ctx) {
        Typed today = DateBoxes.fill(Typed.NOTHING, "on", practice.today()).with("aid", "none");
        pages.show(ctx, TEST, page(client(ctx), guide(ctx), today, new Faults()));
    }

    private TestPage page(Client client, Guide guide, Typed typed, Faults faults) {
        ClientHeader header = ClientHeader.of(client, practice);
        return TestPage.of(
                client, header, screening(client), guide, practice.guides(), practice.catalogue(), typed, faults);
    }

    private void keep(Context ctx) {
        Client client = client(ctx);
        Guide guide = guide(ctx);
        Typed typed = Typed.of(ctx);
        Parsed<Measured> parsed = new MeasureForm(guide).parse(typed, practice.today());
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, TEST, page(client, guide, typed, parsed.faults()));
            return;
        }
        String id = stores.measured().add(client.id(), parsed.value().get());
        Note.leave(ctx, "Kept: " + guide.measure().words() + ".", at(client, id, "back"));
        ctx.redirect(base(client) + "#" + Choice.of(guide.measure()));
    }

    private void takeBack(Context ctx) {
        Client client = client(ctx);
        String id = ctx.pathParam("result");
        if (!stores.measured().takeBack(client.id(), id)) {
            throw new NotFoundResponse();
        }
        Note.leave(ctx, "The result is taken back.", at(client, id, "again"));
        ctx.redirect(base(client));
    }

    private void giveBack(Context ctx) {
        Client client = client(ctx);
        if (!stores.measured().giveBack(client.id(), ctx.pathParam("result"))) {
            throw new NotFoundResponse();
        }
        Note.leave(ctx, "The result counts again.");
        ctx.redirect(base(client));
    }

    private Screening screening(Client client) {
        return practice.screening(client);
    }

    private static String base(Client client) {
        return "/clients/" + client.id().value() + "/measures";
    }

    private static String at(Client client, String result, String act) {
        return base(client) + "/results/" + result + "/" + act;
    }

    private static Guide guide(Context ctx) {
        return Choice.read(Measure.class, ctx.pathParam("test"))
                .map(Guides.shipped()::of)
                .orElseThrow(NotFoundResponse::new);
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }
}
