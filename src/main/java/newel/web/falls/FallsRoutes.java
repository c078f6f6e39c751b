package newel.web.falls;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import newel.client.Client;
import newel.client.ClientId;
import newel.client.FallsAnswers;
import newel.client.FallsItem;
import newel.client.Measure;
import newel.client.Measured;
import newel.screen.FallsPlan;
import newel.screen.FallsRisk;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.client.ClientHeader;
import newel.web.form.Ask;
import newel.web.form.Asking;
import newel.web.form.Faults;
import newel.web.form.Reading;
import newel.web.form.Rows;
import newel.web.form.Typed;

/** What is known about falls, and the longer questionnaire. */
public final class FallsRoutes implements Routes {
    private static final String AT = "/clients/{client}/falls";
    private static final Rows<FallsItem> ITEMS = new Rows<>("falls-", FallsItem.class, FallsItem::words);

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;

    public FallsRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT, ctx -> pages.show(ctx, "falls/show.jte", page(client(ctx))));
        routes.post(AT, this::keep);
    }

    private void keep(Context ctx) {
        Client client = client(ctx);
        FallsAnswers answers = client.falls().withItems(ITEMS.read(new Reading(Typed.of(ctx))));
        stores.clients().keepFalls(client.id(), answers);
        Note.leave(ctx, "The questionnaire is kept.");
        ctx.redirect(path(client));
    }

    private FallsPage page(Client client) {
        FallsRisk risk = practice.screening(client).falls();
        Set<Measure> taken = client.measures().stream().map(Measured::measure).collect(Collectors.toSet());
        client.walkingSpeed().ifPresent(speed -> taken.add(Measure.GAIT_SPEED));
        List<Ask> asks =
                ITEMS.asks(new Asking(ITEMS.fill(Typed.NOTHING, client.falls().items()), new Faults()));
        return new FallsPage(
                ClientHeader.of(client, practice),
                "/clients/" + client.id().value(),
                path(client),
                risk,
                FallsPlan.of(risk, taken),
                asks);
    }

    private static String path(Client client) {
        return "/clients/" + client.id().value() + "/falls";
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }
}
