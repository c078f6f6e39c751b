package newel.web.pain;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.math.BigDecimal;
import java.util.List;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.RedFlag;
import newel.screen.PainLog;
import newel.screen.PainLogged;
import newel.screen.PainModel;
import newel.screen.RedFlagRule;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.client.ClientHeader;
import newel.web.form.Asking;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;
import newel.web.intake.Raising;

/** Pain of a client's sessions. */
public final class PainRoutes implements Routes {
    private static final String AT = "/clients/{client}/pain";
    private static final String TEMPLATE = "pain/show.jte";

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;

    public PainRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT, ctx -> pages.show(ctx, TEMPLATE, page(client(ctx), Typed.NOTHING, new Faults(), "")));
        routes.post(AT, this::log);
        routes.post(AT + "/{log}/morning", this::morning);
    }

    private void log(Context ctx) {
        Client client = client(ctx);
        Typed typed = Typed.of(ctx);
        Parsed<PainForm.Logging> parsed = PainForm.parse(typed);
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, TEMPLATE, page(client, typed, parsed.faults(), ""));
            return;
        }
        PainForm.Logging logging = parsed.value().get();
        PainLog before = lastOf(stores.pains().of(client.id()), logging.where());
        stores.pains()
                .add(
                        client.id(),
                        practice.today(),
                        logging.where(),
                        logging.log(),
                        model().judge(logging.log(), before));
        List<RedFlag> sign =
                logging.log().kind().sign().map(RedFlagRule::flag).stream().toList();
        new Raising(stores).raise(client, sign);
        Note.leave(
                ctx,
                sign.isEmpty() ? "The pain is logged." : "The pain is logged, and stands with the readiness answers.");
        ctx.redirect(path(client));
    }

    private void morning(Context ctx) {
        Client client = client(ctx);
        PainLogged logged =
                stores.pains().find(client.id(), ctx.pathParam("log")).orElseThrow(NotFoundResponse::new);
        Typed typed = Typed.of(ctx);
        Parsed<BigDecimal> parsed = PainForm.parseMorning(typed);
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, TEMPLATE, page(client, typed, parsed.faults(), logged.id()));
            return;
        }
        PainLog told = logged.log().withMorning(parsed.value().get());
        stores.pains().tell(logged.id(), told, model().judge(told, before(client, logged)));
        Note.leave(ctx, "The next morning is kept.");
        ctx.redirect(path(client));
    }

    private PainLog before(Client client, PainLogged logged) {
        List<PainLogged> all = stores.pains().of(client.id());
        List<String> ids = all.stream().map(PainLogged::id).toList();
        return lastOf(all.subList(ids.indexOf(logged.id()) + 1, all.size()), logged.where());
    }

    /** The newest log of the same place; null when there is none. */
    private static PainLog lastOf(List<PainLogged> newestFirst, String where) {
        return newestFirst.stream()
                .filter(each -> each.where().equalsIgnoreCase(where))
                .map(PainLogged::log)
                .findFirst()
                .orElse(null);
    }

    private PainModel model() {
        return new PainModel(practice.choices().painZones());
    }

    private PainPage page(Client client, Typed typed, Faults faults, String morning) {
        boolean ofForm = morning.isEmpty();
        return new PainPage(
                ClientHeader.of(client, practice),
                path(client),
                practice.choices().painZones().words(),
                stores.pains().of(client.id()).stream()
                        .map(each -> PainLines.of(each, practice.emergencyCall()))
                        .toList(),
                PainForm.asks(ofForm ? new Asking(typed, faults) : new Asking(Typed.NOTHING, new Faults())),
                faults,
                morning,
                typed.one(PainForm.MORNING));
    }

    private static String path(Client client) {
        return "/clients/" + client.id().value() + "/pain";
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }
}
