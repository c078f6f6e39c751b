package newel.web.referral;

import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import newel.casefile.CaseWriter;
import newel.client.Client;
import newel.client.ClientId;
import newel.referral.Referral;
import newel.screen.Screening;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.client.ClientHeader;

public final class ReferralRoutes implements Routes {
    private final Pages pages;
    private final Stores stores;
    private final Practice practice;

    public ReferralRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clients/{client}/referral", this::note);
        routes.get("/clients/{client}/case.json", this::casefile);
    }

    private void note(Context ctx) {
        Client client = client(ctx);
        pages.show(
                ctx,
                "referral/note.jte",
                new ReferralPage(
                        ClientHeader.of(client, practice.today()),
                        Referral.of(client, Screening.of(client), practice.today())
                                .orElse(null)));
    }

    private void casefile(Context ctx) {
        ctx.header("Content-Disposition", "attachment; filename=\"case.json\"");
        ctx.contentType("application/json; charset=utf-8")
                .result(JsonMapper.builder()
                        .build()
                        .valueToTree(CaseWriter.write(client(ctx), practice.today()))
                        .toPrettyString());
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }
}
