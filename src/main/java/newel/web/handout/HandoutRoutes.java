package newel.web.handout;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import newel.client.Client;
import newel.client.ClientId;
import newel.handout.Handout;
import newel.handout.Handouts;
import newel.program.Program;
import newel.screen.Permission;
import newel.screen.Today;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;

public final class HandoutRoutes implements Routes {
    private static final String AT = "/clients/{client}/program";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    /** Withdrawn and never made alike: the answer tells a guesser nothing. */
    private static final int GONE = 410;

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final Handouts handouts;

    public HandoutRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.handouts = new Handouts(practice.catalogue());
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/h/{token}", this::own);
        routes.get(AT + "/handout", this::look);
        routes.post(AT + "/link", this::link);
        routes.post(AT + "/link/withdrawal", this::withdraw);
    }

    private void look(Context ctx) {
        Client client = client(ctx);
        Program program = program(client);
        List<String> withheld = mayStart(client) ? List.of() : withheld(client);
        show(ctx, client, program, "/clients/" + client.id().value() + "/program", withheld);
    }

    /** The client's own page: the newest handout of one program, or a plain word why it is not there. */
    private void own(Context ctx) {
        Optional<Program> program = stores.links().opens(ctx.pathParam("token")).flatMap(stores.programs()::find);
        Optional<Client> client = program.flatMap(found -> stores.clients().find(found.client()));
        if (client.isEmpty()) {
            ctx.status(GONE);
            pages.show(ctx, "handout/gone.jte", "");
        } else if (!mayStart(client.get())) {
            pages.show(ctx, "handout/wait.jte", "");
        } else {
            show(ctx, client.get(), program.get(), "", List.of());
        }
    }

    private void show(Context ctx, Client client, Program program, String back, List<String> withheld) {
        Handout handout = handouts.write(client, program.newest());
        pages.show(
                ctx,
                "handout/sheet.jte",
                new HandoutPage(handout, handout.made().format(DAY), back, withheld));
    }

    private void link(Context ctx) {
        Client client = client(ctx);
        if (mayStart(client)) {
            Program program = program(client);
            stores.links().withdraw(program.id());
            stores.links().make(program.id());
            Note.leave(ctx, "The link is made. Give it to nobody but the client.");
        } else {
            Note.leave(ctx, "No link was made: an answer is still waited for.");
        }
        ctx.redirect("/clients/" + client.id().value() + "/program");
    }

    private void withdraw(Context ctx) {
        Client client = client(ctx);
        stores.links().withdraw(program(client).id());
        Note.leave(ctx, "The link is withdrawn and opens nothing any more.");
        ctx.redirect("/clients/" + client.id().value() + "/program");
    }

    /** Nothing waits for the client, and today's check did not say no. */
    private boolean mayStart(Client client) {
        return practice.screening(client).permission() == Permission.START && !heldToday(client);
    }

    private boolean heldToday(Client client) {
        return stores.checks()
                .on(client.id(), practice.today())
                .filter(checked -> checked.outcome() instanceof Today.NotToday)
                .isPresent();
    }

    private List<String> withheld(Client client) {
        List<String> lines = new ArrayList<>(practice.screening(client).face());
        if (heldToday(client)) {
            lines.addFirst("Today's check says: not today.");
        }
        return List.copyOf(lines);
    }

    private Program program(Client client) {
        return stores.programs().of(client.id()).orElseThrow(NotFoundResponse::new);
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }
}
