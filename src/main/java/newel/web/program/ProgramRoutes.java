package newel.web.program;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import newel.catalogue.Kind;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.client.ClientId;
import newel.compose.Block;
import newel.compose.Session;
import newel.compose.Suiting;
import newel.program.Drafting;
import newel.program.Edit;
import newel.program.Editing;
import newel.program.Program;
import newel.program.Version;
import newel.screen.Screening;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.client.ClientHeader;
import newel.web.form.Parsed;
import newel.web.form.Typed;

public final class ProgramRoutes implements Routes {
    private static final String AT = "/clients/{client}/program";
    private static final int STALE = 409;

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final ProgramPages programPages;
    private final SwapPages swapPages;

    public ProgramRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.programPages = new ProgramPages(practice.catalogue());
        this.swapPages = new SwapPages(practice.catalogue());
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT, this::newest);
        routes.post(AT, this::draft);
        routes.get(AT + "/versions/{number}", this::version);
        routes.get(AT + "/items/{movement}", this::swapping);
        routes.post(AT + "/items/{movement}/swap", this::swap);
        routes.post(AT + "/items/{movement}/dose", this::dose);
        routes.post(AT + "/items/{movement}/move", this::move);
        routes.post(AT + "/items/{movement}/removal", this::remove);
        routes.get(AT + "/blocks/{block}/addition", this::adding);
        routes.post(AT + "/blocks/{block}/addition", this::add);
    }

    private void newest(Context ctx) {
        Client client = client(ctx);
        Optional<Program> program = stores.programs().of(client.id());
        if (program.isEmpty()) {
            pages.show(ctx, "program/none.jte", NoProgramPage.of(client, practice.today()));
        } else {
            show(ctx, known(client, program.get()), "");
        }
    }

    private void show(Context ctx, Known known, String fault) {
        String link = stores.links()
                .of(known.program().id())
                .map(token -> "/h/" + token)
                .orElse("");
        pages.show(
                ctx,
                "program/show.jte",
                programPages.page(known, known.program().newest(), practice.today(), fault, link));
    }

    private void version(Context ctx) {
        Known known = known(ctx);
        int number = ctx.pathParam("number").matches("\\d{1,6}") ? Integer.parseInt(ctx.pathParam("number")) : 0;
        Version version = known.program().version(number).orElseThrow(NotFoundResponse::new);
        pages.show(ctx, "program/show.jte", programPages.page(known, version, practice.today(), "", ""));
    }

    /** The first draft, or a new one that becomes the next version. */
    private void draft(Context ctx) {
        Client client = client(ctx);
        Suiting suiting = practice.suiting(client);
        Optional<Program> program = stores.programs().of(client.id());
        if (program.isEmpty()) {
            stores.programs()
                    .begin(client.id(), Drafting.first(practice.catalogue(), client, suiting, practice.today()));
            Note.leave(ctx, "Here is a first draft. Everything in it can be changed.");
        } else {
            Version before = program.get().newest();
            stores.programs()
                    .add(
                            program.get().id(),
                            Drafting.again(practice.catalogue(), client, suiting, practice.today(), before));
            Note.leave(ctx, "Drafted anew. Version " + before.number() + " can still be read below.");
        }
        ctx.redirect(base(client));
    }

    private void swapping(Context ctx) {
        Known known = known(ctx);
        Variant now = variantOf(known, ctx.pathParam("movement"));
        pages.show(ctx, "program/swap.jte", swapPage(known, now, "", "", ""));
    }

    private SwapPage swapPage(Known known, Variant now, String chosen, String override, String fault) {
        Session session = known.program().newest().session();
        return new SwapPage(
                ClientHeader.of(known.client(), practice.today()),
                base(known.client()),
                known.program().newest().number(),
                "Swap: " + now.name(),
                "Steps further right are harder. Each shows how far this client may go.",
                base(known.client()) + "/items/" + now.movement() + "/swap",
                swapPages.around(
                        now, known.suiting(), movement -> session.item(movement).isPresent()),
                chosen,
                override,
                fault);
    }

    private void swap(Context ctx) {
        Known known = known(ctx);
        String movement = ctx.pathParam("movement");
        Variant now = variantOf(known, movement);
        Typed typed = Typed.of(ctx);
        Optional<Variant> chosen = practice.catalogue().variant(typed.one("variant"));
        Edit edit = chosen.isEmpty()
                ? new Edit.Refused("Choose the form that you want in its place.")
                : editing(known)
                        .swap(known.program().newest().session(), movement, chosen.get(), typed.one("override"));
        if (edit instanceof Edit.Refused refused) {
            pages.refuse(
                    ctx,
                    "program/swap.jte",
                    swapPage(known, now, typed.one("variant"), typed.one("override"), refused.why()));
        } else {
            keep(ctx, known, edit);
        }
    }

    private void adding(Context ctx) {
        Known known = known(ctx);
        pages.show(ctx, "program/swap.jte", addPage(known, block(ctx, known), "", "", ""));
    }

    private SwapPage addPage(Known known, int block, String chosen, String override, String fault) {
        Session session = known.program().newest().session();
        return new SwapPage(
                ClientHeader.of(known.client(), practice.today()),
                base(known.client()),
                known.program().newest().number(),
                "Add to the " + session.blocks().get(block).kind().words().toLowerCase(java.util.Locale.ROOT),
                "Those with a fitting form come first.",
                base(known.client()) + "/blocks/" + block + "/addition",
                swapPages.of(
                        kinds(session.blocks().get(block)),
                        known.suiting(),
                        movement -> session.item(movement).isPresent()),
                chosen,
                override,
                fault);
    }

    private static List<Kind> kinds(Block block) {
        return switch (block.kind()) {
            case WARM_UP -> List.of(Kind.PULSE, Kind.MOBILITY);
            case BALANCE -> List.of(Kind.BALANCE);
            case ROUND -> List.of(Kind.STRENGTH, Kind.PULSE);
            case COOL_DOWN -> List.of(Kind.STRETCH, Kind.MOBILITY, Kind.BREATH);
        };
    }

    private void add(Context ctx) {
        Known known = known(ctx);
        int block = block(ctx, known);
        Typed typed = Typed.of(ctx);
        Optional<Variant> chosen = practice.catalogue().variant(typed.one("variant"));
        Edit edit = chosen.isEmpty()
                ? new Edit.Refused("Choose what you want to add.")
                : editing(known).add(known.program().newest().session(), block, chosen.get(), typed.one("override"));
        if (edit instanceof Edit.Refused refused) {
            pages.refuse(
                    ctx,
                    "program/swap.jte",
                    addPage(known, block, typed.one("variant"), typed.one("override"), refused.why()));
        } else {
            keep(ctx, known, edit);
        }
    }

    private static int block(Context ctx, Known known) {
        String text = ctx.pathParam("block");
        int block = text.matches("\\d{1,3}") ? Integer.parseInt(text) : Integer.MAX_VALUE;
        if (block >= known.program().newest().session().blocks().size()) {
            throw new NotFoundResponse();
        }
        return block;
    }

    private void dose(Context ctx) {
        Known known = known(ctx);
        String movement = variantOf(known, ctx.pathParam("movement")).movement();
        Parsed<newel.catalogue.Dose> parsed = DoseForm.parse(Typed.of(ctx));
        if (parsed.value().isEmpty()) {
            ctx.status(422);
            show(ctx, known, parsed.faults().all().getFirst().message());
        } else {
            keep(
                    ctx,
                    known,
                    editing(known)
                            .dose(
                                    known.program().newest().session(),
                                    movement,
                                    parsed.value().get()));
        }
    }

    private void move(Context ctx) {
        Known known = known(ctx);
        String movement = variantOf(known, ctx.pathParam("movement")).movement();
        int by = "earlier".equals(ctx.formParam("where")) ? -1 : 1;
        keep(ctx, known, editing(known).move(known.program().newest().session(), movement, by));
    }

    private void remove(Context ctx) {
        Known known = known(ctx);
        String movement = variantOf(known, ctx.pathParam("movement")).movement();
        keep(ctx, known, editing(known).remove(known.program().newest().session(), movement));
    }

    /** Keeps the change as the next version, unless somebody changed the program since the page was shown. */
    private void keep(Context ctx, Known known, Edit edit) {
        switch (edit) {
            case Edit.Refused refused -> {
                ctx.status(422);
                show(ctx, known, refused.why());
            }
            case Edit.Made made -> {
                Version before = known.program().newest();
                boolean fresh = String.valueOf(before.number()).equals(ctx.formParam("version"));
                boolean kept = fresh
                        && stores.programs()
                                .add(
                                        known.program().id(),
                                        before.next(practice.today(), made.reason(), made.session()));
                if (kept) {
                    Note.leave(ctx, made.reason() + " This is version " + (before.number() + 1) + ".");
                    ctx.redirect(base(known.client()));
                } else {
                    ctx.status(STALE);
                    show(
                            ctx,
                            known(
                                    known.client(),
                                    stores.programs().of(known.client().id()).orElseThrow()),
                            "The program was changed in the meantime. This is how it is now; make your change again.");
                }
            }
        }
    }

    private Editing editing(Known known) {
        return new Editing(practice.catalogue(), known.suiting());
    }

    private Variant variantOf(Known known, String movement) {
        return known.program()
                .newest()
                .session()
                .item(movement)
                .flatMap(item -> practice.catalogue().variant(item.variant()))
                .orElseThrow(NotFoundResponse::new);
    }

    private Known known(Context ctx) {
        Client client = client(ctx);
        return known(client, stores.programs().of(client.id()).orElseThrow(NotFoundResponse::new));
    }

    private Known known(Client client, Program program) {
        return new Known(client, Screening.of(client), practice.suiting(client), program);
    }

    private Client client(Context ctx) {
        return stores.clients().find(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }

    private static String base(Client client) {
        return "/clients/" + client.id().value() + "/program";
    }
}
