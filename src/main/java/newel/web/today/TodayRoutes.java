package newel.web.today;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import newel.client.Client;
import newel.client.ClientId;
import newel.screen.Checked;
import newel.screen.SugarToday;
import newel.screen.Today;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.client.ClientHeader;
import newel.web.client.TodayBand;
import newel.web.form.Asking;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;
import newel.web.intake.Raising;

/** The check before a session, and what it said. */
public final class TodayRoutes implements Routes {
    private static final String AT = "/clients/{client}/today";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;

    public TodayRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT, ctx -> pages.show(ctx, "today/ask.jte", page(client(ctx), Typed.NOTHING, new Faults())));
        routes.post(AT, this::check);
        routes.get(AT + "/{check}", this::outcome);
    }

    private void check(Context ctx) {
        Client client = client(ctx);
        Typed typed = Typed.of(ctx);
        Parsed<TodayForm.Checking> parsed = form(client).parse(typed);
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, "today/ask.jte", page(client, typed, parsed.faults()));
            return;
        }
        TodayForm.Checking checking = parsed.value().get();
        Today outcome = Today.of(checking.answers(), checking.glucose(), client, practice.choices(), practice.today());
        String id = stores.checks().add(client.id(), practice.today(), checking.answers(), checking.glucose(), outcome);
        new Raising(stores).raise(client, Today.beyond(checking.answers()));
        ctx.redirect(base(client) + "/" + id);
    }

    private void outcome(Context ctx) {
        Client client = client(ctx);
        Checked checked =
                stores.checks().find(client.id(), ctx.pathParam("check")).orElseThrow(NotFoundResponse::new);
        TodayBand band = TodayBand.of(base(client), checked, practice.emergencyCall());
        pages.show(
                ctx,
                "today/outcome.jte",
                OutcomePage.of(
                        ClientHeader.of(client, practice),
                        base(client),
                        checked.on().format(DAY),
                        checked,
                        band));
    }

    private TodayPage page(Client client, Typed typed, Faults faults) {
        return new TodayPage(
                ClientHeader.of(client, practice),
                base(client),
                practice.today().format(DAY),
                form(client).asks(new Asking(typed, faults)),
                faults,
                before(client));
    }

    private List<TodayPage.Before> before(Client client) {
        return stores.checks().of(client.id()).stream()
                .map(checked -> before(checked, TodayBand.of(base(client), checked, practice.emergencyCall())))
                .toList();
    }

    private static TodayPage.Before before(Checked checked, TodayBand band) {
        return new TodayPage.Before(band.path(), checked.on().format(DAY), band.tone(), band.words());
    }

    private static TodayForm form(Client client) {
        return new TodayForm(SugarToday.asked(client));
    }

    private static String base(Client client) {
        return "/clients/" + client.id().value() + "/today";
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }
}
