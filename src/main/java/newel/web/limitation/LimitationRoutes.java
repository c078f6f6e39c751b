package newel.web.limitation;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import newel.client.Client;
import newel.client.ClientId;
import newel.limit.Called;
import newel.limit.Limitation;
import newel.limit.Presets;
import newel.store.Ids;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.client.ClientHeader;
import newel.web.form.Asking;
import newel.web.form.DateBoxes;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

public final class LimitationRoutes implements Routes {
    private static final String AT = "/clients/{client}/limitations";

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final LimitationForm form;

    public LimitationRoutes(Pages pages, Stores stores, Practice practice, Presets presets) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.form = new LimitationForm(presets, "limitation-");
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT + "/new", this::ask);
        routes.post(AT, this::log);
        routes.get(AT + "/{limitation}", this::limits);
        routes.post(AT + "/{limitation}", this::change);
        routes.post(AT + "/{limitation}/end", this::end);
        routes.post(AT + "/{limitation}/resume", this::resume);
    }

    private void ask(Context ctx) {
        Typed today = DateBoxes.fill(Typed.NOTHING, "limitation-since", practice.today());
        pages.show(ctx, "limitation/new.jte", page(client(ctx), today, new Faults()));
    }

    private LimitationPage page(Client client, Typed typed, Faults faults) {
        return new LimitationPage(
                ClientHeader.of(client, practice),
                form.asks(new Asking(typed, faults)),
                faults,
                stores.programs().of(client.id()).isPresent());
    }

    /** Logs it; with a program, the next page shows at once what no longer fits. */
    private void log(Context ctx) {
        Client client = client(ctx);
        Typed typed = Typed.of(ctx);
        Parsed<Limitation> parsed = form.parseNew(typed, Ids.next(), practice.today(), client.limitations());
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, "limitation/new.jte", page(client, typed, parsed.faults()));
            return;
        }
        Limitation limitation = parsed.value().get();
        stores.limitations().add(client.id(), limitation);
        written(client, limitation, "Logged: " + Called.of(limitation) + ".");
        boolean program = stores.programs().of(client.id()).isPresent();
        Note.leave(ctx, "Logged: " + Called.of(limitation) + ".", at(client, limitation.id(), "end"));
        ctx.redirect("/clients/" + client.id().value() + (program ? "/program/changes" : ""));
    }

    private void limits(Context ctx) {
        Client client = client(ctx);
        Limitation limitation = limitation(ctx, client);
        pages.show(
                ctx,
                "limitation/limits.jte",
                limitsPage(client, limitation, LimitsForm.fill(limitation), new Faults()));
    }

    private LimitsPage limitsPage(Client client, Limitation limitation, Typed typed, Faults faults) {
        return new LimitsPage(
                ClientHeader.of(client, practice),
                limitation.id(),
                limitation.words(),
                limitation.source() == Limitation.Source.CLINICIAN,
                LimitsForm.asks(limitation, new Asking(typed, faults)),
                faults,
                stores.limitations().reasons(limitation.id()));
    }

    /** Keeps the changed limits; the program is looked at again at once. */
    private void change(Context ctx) {
        Client client = client(ctx);
        Limitation limitation = limitation(ctx, client);
        Typed typed = Typed.of(ctx);
        Parsed<LimitsForm.Change> parsed = LimitsForm.parse(limitation, typed);
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, "limitation/limits.jte", limitsPage(client, limitation, typed, parsed.faults()));
            return;
        }
        LimitsForm.Change change = parsed.value().get();
        stores.limitations().change(client.id(), limitation, change.limits(), change.reason());
        String why = change.reason().isBlank() ? "" : " Reason: " + change.reason();
        written(client, limitation, "Limits changed: " + Called.of(limitation) + "." + why);
        boolean program = stores.programs().of(client.id()).isPresent();
        Note.leave(ctx, "The limits are changed.");
        ctx.redirect("/clients/" + client.id().value() + (program ? "/program/changes" : ""));
    }

    private Limitation limitation(Context ctx, Client client) {
        return stores.limitations()
                .find(client.id(), ctx.pathParam("limitation"))
                .orElseThrow(NotFoundResponse::new);
    }

    private void end(Context ctx) {
        Client client = client(ctx);
        String id = ctx.pathParam("limitation");
        if (!stores.limitations().end(client.id(), id)) {
            throw new NotFoundResponse();
        }
        stores.audit().write(client.id(), id, "No longer holds: " + Called.of(limitation(ctx, client)) + ".");
        Note.leave(ctx, "It no longer holds.", at(client, id, "resume"));
        ctx.redirect("/clients/" + client.id().value());
    }

    /** Not where the same was logged anew meanwhile. */
    private void resume(Context ctx) {
        Client client = client(ctx);
        Limitation limitation = limitation(ctx, client);
        boolean anew = client.limitations().stream()
                .anyMatch(each -> !each.id().equals(limitation.id()) && each.saysTheSame(limitation));
        if (!anew) {
            stores.limitations().resume(client.id(), limitation.id());
            written(client, limitation, "Holds again: " + Called.of(limitation) + ".");
        }
        Note.leave(ctx, anew ? "It was logged anew meanwhile and holds already." : "It holds again.");
        ctx.redirect("/clients/" + client.id().value());
    }

    private void written(Client client, Limitation limitation, String what) {
        stores.audit().write(client.id(), limitation.id(), what);
    }

    private static String at(Client client, String limitation, String act) {
        return "/clients/" + client.id().value() + "/limitations/" + limitation + "/" + act;
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }
}
