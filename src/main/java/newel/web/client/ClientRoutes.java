package newel.web.client;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import newel.client.Client;
import newel.client.ClientId;
import newel.limit.Limitation;
import newel.referral.Note;
import newel.screen.Permission;
import newel.store.ClientStore;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.Faults;

public final class ClientRoutes implements Routes {
    private final Pages pages;
    private final Stores stores;
    private final Practice practice;

    public ClientRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/", ctx -> ctx.redirect("/clients"));
        routes.get("/clients", this::list);
        routes.get("/clients/{client}", this::show);
    }

    private void list(Context ctx) {
        Map<ClientId, List<Note>> notes = stores.referrals().open();
        pages.show(
                ctx,
                "client/list.jte",
                ClientListPage.of(stores.clients().all().stream()
                        .map(each -> line(each, notes.getOrDefault(each.id(), List.of())))
                        .toList()));
    }

    private ClientListPage.Line line(ClientStore.Opened opened, List<Note> notes) {
        String path = "/clients/" + opened.id().value();
        return stores.clients()
                .find(opened.id())
                .map(client -> new ClientListPage.Line(path, opened.name(), age(client), needs(opened, client, notes)))
                .orElseGet(() -> new ClientListPage.Line(
                        path + "/intake",
                        opened.name(),
                        "",
                        List.of(new ClientListPage.Need("quiet", "Intake not finished"))));
    }

    private String age(Client client) {
        return client.profile().age(practice.today()) + " years";
    }

    private List<ClientListPage.Need> needs(ClientStore.Opened opened, Client client, List<Note> notes) {
        List<ClientListPage.Need> needs = new ArrayList<>();
        Permission permission = practice.screening(client).permission();
        if (permission == Permission.NOTHING) {
            needs.add(new ClientListPage.Need("stop", "No exercise yet"));
        } else if (permission == Permission.PREPARE) {
            needs.add(new ClientListPage.Need("care", "Waits for an answer"));
        }
        notes.stream().map(this::need).distinct().forEach(needs::add);
        if (opened.drafted()) {
            needs.add(new ClientListPage.Need("quiet", "Intake not finished"));
        }
        if (stores.programs().of(client.id()).isEmpty()) {
            needs.add(new ClientListPage.Need("quiet", "No program yet"));
        }
        if (reviewDue(client, practice.today())) {
            needs.add(new ClientListPage.Need("care", "Review due"));
        }
        return needs;
    }

    private ClientListPage.Need need(Note note) {
        String state = note.sent().isPresent() ? "not answered" : "not sent";
        return note.overdue(practice.today())
                ? new ClientListPage.Need("stop", "Referral note overdue, " + state)
                : new ClientListPage.Need("quiet", "Referral note " + state);
    }

    private static boolean reviewDue(Client client, LocalDate today) {
        return client.limitations().stream()
                .map(Limitation::review)
                .filter(Objects::nonNull)
                .anyMatch(day -> !day.isAfter(today));
    }

    private void show(Context ctx) {
        ClientId id = new ClientId(ctx.pathParam("client"));
        ClientStore.Opened opened = stores.clients().opened(id).orElseThrow(NotFoundResponse::new);
        if (!opened.whole()) {
            ctx.redirect("/clients/" + id.value() + "/intake");
            return;
        }
        Client client = stores.clients().find(id).orElseThrow(NotFoundResponse::new);
        pages.show(ctx, ClientPages.TEMPLATE, new ClientPages(stores, practice).page(client, new Faults()));
    }
}
