package newel.web.client;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import newel.store.ClientStore;
import newel.web.Pages;
import newel.web.Routes;

public final class ClientRoutes implements Routes {
    private final Pages pages;
    private final ClientStore clients;

    public ClientRoutes(Pages pages, ClientStore clients) {
        this.pages = pages;
        this.clients = clients;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/", ctx -> ctx.redirect("/clients"));
        routes.get("/clients", this::list);
    }

    private void list(Context ctx) {
        pages.show(
                ctx,
                "client/list.jte",
                ClientListPage.of(clients.all().stream().map(ClientRoutes::line).toList()));
    }

    private static ClientListPage.Line line(ClientStore.Opened opened) {
        List<ClientListPage.Need> needs =
                opened.drafted() ? List.of(new ClientListPage.Need("quiet", "Intake not finished")) : List.of();
        return new ClientListPage.Line("/clients/" + opened.id().value(), opened.name(), "", needs);
    }
}
