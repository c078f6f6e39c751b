package newel.web.program;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.client.ClientId;
import newel.compose.How;
import newel.compose.Item;
import newel.handout.DoseWords;
import newel.handout.Pictures;
import newel.handout.RangeWords;
import newel.limit.Limitation;
import newel.program.Program;
import newel.program.Proposal;
import newel.program.Replacement;
import newel.program.Version;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.client.ClientHeader;

/** What today's limits ask of the program as it stands; one press makes the next version. */
public final class ChangesRoutes implements Routes {
    private static final String AT = "/clients/{client}/program/changes";

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;

    public ChangesRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT, this::show);
        routes.post(AT, this::make);
    }

    private void show(Context ctx) {
        Client client = client(ctx);
        Program program = program(client);
        pages.show(ctx, "program/changes.jte", page(client, program));
    }

    private ChangesPage page(Client client, Program program) {
        Version version = program.newest();
        Proposal proposal = proposal(client, version);
        Set<String> changing = proposal.replacements().stream()
                .map(each -> each.before().movement())
                .collect(Collectors.toSet());
        List<ChangesPage.Kept> kept = version.items().stream()
                .filter(item -> !changing.contains(item.movement()))
                .map(item -> new ChangesPage.Kept(variant(item).name()))
                .toList();
        return new ChangesPage(
                ClientHeader.of(client, practice),
                "/clients/" + client.id().value() + "/program",
                version.number(),
                reason(client),
                proposal.replacements().stream()
                        .map(each -> change(each, client.look()))
                        .toList(),
                kept);
    }

    private ChangesPage.Change change(Replacement each, String look) {
        return new ChangesPage.Change(
                side(each.before(), look),
                each.reasons(),
                each.after().map(after -> how(after.how())).orElse("Nothing of its kind fits. It is left out."),
                each.after().map(after -> side(after, look)).orElse(null));
    }

    private static String how(How how) {
        return switch (how) {
            case KEPT, CHOSEN -> "Stays.";
            case SMALLER_DOSE -> "The same, but less of it.";
            case TRIMMED -> "The same, through part of the way.";
            case REGRESSED -> "An easier form of the same movement.";
            case SUBSTITUTED -> "Another movement with the nearest purpose.";
        };
    }

    private ChangesPage.Side side(Item item, String look) {
        Variant variant = variant(item);
        return new ChangesPage.Side(
                variant.name(),
                DoseWords.of(item.dose(), variant.sides()),
                RangeWords.of(item.share()),
                Pictures.of(variant, item.share(), look));
    }

    private void make(Context ctx) {
        Client client = client(ctx);
        Program program = program(client);
        Version before = program.newest();
        Proposal proposal = proposal(client, before);
        if (proposal.nothing() || !String.valueOf(before.number()).equals(ctx.formParam("version"))) {
            Note.leave(ctx, "Nothing was changed: the program is not as it was when this page was opened. Look again.");
            ctx.redirect("/clients/" + client.id().value() + "/program/changes");
            return;
        }
        Version next =
                before.next(practice.today(), reason(client), proposal::applied, proposal.leftOut(before.leftOut()));
        stores.programs().add(program.id(), next);
        Note.leave(ctx, "Version " + next.number() + " is made, and the handout is the new one.");
        ctx.redirect("/clients/" + client.id().value() + "/program");
    }

    private Proposal proposal(Client client, Version version) {
        return Proposal.of(catalogue(), version, practice.suiting(client));
    }

    /** The newest limitation names the reason. */
    private static String reason(Client client) {
        List<Limitation> limitations = client.limitations();
        return limitations.isEmpty()
                ? "Fitted to today's limits."
                : "Limitation logged: " + limitations.getLast().words() + ", since "
                        + limitations.getLast().since().format(ProgramPages.DAY) + ".";
    }

    private Variant variant(Item item) {
        return catalogue().variant(item.variant()).orElseThrow();
    }

    private Catalogue catalogue() {
        return practice.catalogue();
    }

    private Program program(Client client) {
        return stores.programs().of(client.id()).orElseThrow(NotFoundResponse::new);
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }
}
