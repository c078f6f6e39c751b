package newel.web.movement;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.client.ClientId;
import newel.compose.Item;
import newel.program.Program;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;

/** The catalogue for the instructor: finding, a movement with its stair, and each of its forms. */
public final class MovementRoutes implements Routes {
    static final String AT = "/movements";

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final FindPages findPages;
    private final VariantPages variantPages;

    public MovementRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.findPages = new FindPages(practice.catalogue());
        this.variantPages = new VariantPages(practice);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT, this::find);
        routes.get(AT + "/{movement}", this::movement);
        routes.get(AT + "/{movement}/{variant}", this::variant);
    }

    private void find(Context ctx) {
        Optional<Chosen> chosen = chosen(ctx);
        FilterForm form = FilterForm.of(ctx, chosen, stores.search()::find);
        FindPage page = findPages.page(form, chosen, stores.clients().all());
        if (form.faults().isEmpty()) {
            pages.show(ctx, "movement/find.jte", page);
        } else {
            pages.refuse(ctx, "movement/find.jte", page);
        }
    }

    private void movement(Context ctx) {
        Movement movement =
                practice.catalogue().movement(ctx.pathParam("movement")).orElseThrow(NotFoundResponse::new);
        Optional<Chosen> chosen = chosen(ctx);
        pages.show(ctx, "movement/show.jte", MovementPages.page(movement, chosen, now(chosen), clients(chosen)));
    }

    private void variant(Context ctx) {
        Variant variant = practice.catalogue()
                .variant(ctx.pathParam("variant"))
                .filter(each -> each.movement().equals(ctx.pathParam("movement")))
                .orElseThrow(NotFoundResponse::new);
        Optional<Chosen> chosen = chosen(ctx);
        pages.show(ctx, "movement/variant.jte", variantPages.page(variant, chosen, program(chosen), clients(chosen)));
    }

    /** Nobody when none is asked for; a client that is not there is not found. */
    private Optional<Chosen> chosen(Context ctx) {
        String id = ctx.queryParam("client");
        if (id == null || id.isBlank()) {
            return Optional.empty();
        }
        Client client = stores.clients().find(new ClientId(id)).orElseThrow(NotFoundResponse::new);
        return Optional.of(new Chosen(client, practice));
    }

    private List<FindPage.Option> clients(Optional<Chosen> chosen) {
        return Picker.of(stores.clients().all(), chosen.map(Chosen::id).orElse(""));
    }

    private Optional<Program> program(Optional<Chosen> chosen) {
        return chosen.flatMap(each -> stores.programs().of(each.client().id()));
    }

    private Set<String> now(Optional<Chosen> chosen) {
        return program(chosen).stream()
                .flatMap(program -> program.newest().items().stream())
                .map(Item::variant)
                .collect(Collectors.toSet());
    }

    static String query(Optional<Chosen> chosen) {
        return chosen.map(each -> "?client=" + each.id()).orElse("");
    }

    static String path(Movement movement, Optional<Chosen> chosen) {
        return AT + "/" + movement.id() + query(chosen);
    }

    static String path(Variant variant, Optional<Chosen> chosen) {
        return AT + "/" + variant.movement() + "/" + variant.id() + query(chosen);
    }
}
