package newel.web.intake;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import newel.client.Client;
import newel.client.ClientId;
import newel.limit.Called;
import newel.limit.Limitation;
import newel.limit.Presets;
import newel.store.ClientStore;
import newel.store.Ids;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.DateBoxes;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

public final class IntakeRoutes implements Routes {
    private static final String AT = "/clients/{client}/intake";
    private static final String NEW = "/clients/new";

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final Entries entries;

    public IntakeRoutes(Pages pages, Stores stores, Practice practice, Presets presets) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.entries = new Entries(presets);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(NEW, ctx -> show(ctx, NEW, "", Step.PERSON, intake(Typed.NOTHING), new Faults()));
        routes.post(NEW, this::open);
        routes.get(AT, ctx -> ctx.redirect("/clients/" + opened(ctx).id().value() + "/intake/person"));
        routes.get(AT + "/urgent", this::urgent);
        routes.get(AT + "/{step}", this::ask);
        routes.post(AT + "/{step}", this::keep);
        routes.post(AT, this::finish);
    }

    /** The first page opens the client once it is in order; from then on everything is kept as it comes, right or wrong. */
    private void open(Context ctx) {
        Intake intake = intake(Typed.of(ctx));
        Faults faults = intake.faults(Step.PERSON);
        if (!faults.none()) {
            ctx.status(422);
            show(ctx, NEW, "", Step.PERSON, intake, faults);
            return;
        }
        ClientId id = stores.clients().open(intake.typed().one("person-name"));
        stores.drafts().keep(id, intake.typed().values());
        ctx.redirect("/clients/" + id.value() + "/intake/home");
    }

    private void ask(Context ctx) {
        ClientStore.Opened opened = opened(ctx);
        Step step = step(ctx);
        Intake intake = intake(draft(opened.id()));
        if (step == Step.CHECK) {
            pages.show(ctx, "intake/check.jte", checkPage(opened, intake, List.of()));
        } else {
            show(
                    ctx,
                    base(opened.id()),
                    opened.name(),
                    step,
                    step == Step.LIMITATIONS ? withToday(intake) : intake,
                    new Faults());
        }
    }

    /** A new entry starts with today's date. */
    private Intake withToday(Intake intake) {
        Typed typed = intake.typed();
        return Entries.begun(typed) ? intake : intake(DateBoxes.fill(typed, Entries.NEW + "since", practice.today()));
    }

    /** Keeps what was typed, right or wrong, before anything else; going back asks for nothing. */
    private void keep(Context ctx) {
        ClientStore.Opened opened = opened(ctx);
        Step step = step(ctx);
        String go = Optional.ofNullable(ctx.formParam("go")).orElse("next");
        Typed typed = Typed.of(ctx).without("go");
        if (step == Step.LIMITATIONS) {
            limitations(ctx, opened, typed, go);
            return;
        }
        Typed draft = draft(opened.id()).without(step.prefix()).with(typed);
        stores.drafts().keep(opened.id(), draft.values());
        Intake intake = intake(draft);
        Faults faults = intake.faults(step);
        if (go.equals("back") || faults.none()) {
            rename(opened, draft, faults);
            if (step == Step.READINESS
                    && !go.equals("back")
                    && urgent(opened, intake).isPresent()) {
                ctx.redirect(base(opened.id()) + "/urgent");
            } else {
                onward(ctx, opened, step, go);
            }
        } else {
            ctx.status(422);
            show(ctx, base(opened.id()), opened.name(), step, intake, faults);
        }
    }

    /** What must be done before the intake goes on; the way on is left open. */
    private void urgent(Context ctx) {
        ClientStore.Opened opened = opened(ctx);
        Optional<UrgentPage> urgent = urgent(opened, intake(draft(opened.id())));
        if (urgent.isPresent()) {
            pages.show(ctx, "intake/urgent.jte", urgent.get());
        } else {
            ctx.redirect(base(opened.id()) + "/" + Step.LIMITATIONS.slug());
        }
    }

    private Optional<UrgentPage> urgent(ClientStore.Opened opened, Intake intake) {
        return intake.answered()
                .flatMap(answered -> UrgentPage.of(base(opened.id()), opened.name(), answered, practice));
    }

    private void rename(ClientStore.Opened opened, Typed draft, Faults faults) {
        String name = draft.one("person-name");
        if (!name.isEmpty() && faults.at("person-name").isEmpty() && !name.equals(opened.name()) && !opened.whole()) {
            stores.clients().rename(opened.id(), name);
        }
    }

    private static void onward(Context ctx, ClientStore.Opened opened, Step step, String go) {
        Step next = go.equals("back") ? step.before() : go.equals("check") ? Step.CHECK : step.next();
        ctx.redirect(base(opened.id()) + "/" + next.slug());
    }

    private void limitations(Context ctx, ClientStore.Opened opened, Typed typed, String go) {
        Typed draft = draft(opened.id()).without(Entries.NEW);
        if (go.startsWith("remove-")) {
            String number = go.substring("remove-".length());
            if (number.matches("\\d{1,3}")) {
                draft = Entries.removed(draft, Integer.parseInt(number));
            }
            stores.drafts()
                    .keep(opened.id(), draft.with(typed.under(Entries.NEW)).values());
            ctx.redirect(base(opened.id()) + "/limitations");
            return;
        }
        boolean begun = Entries.begun(typed);
        if (go.equals("back") || !begun && !go.equals("add")) {
            stores.drafts().keep(opened.id(), (begun ? draft.with(typed.under(Entries.NEW)) : draft).values());
            onward(ctx, opened, Step.LIMITATIONS, go);
            return;
        }
        add(ctx, opened, draft, typed, go);
    }

    private void add(Context ctx, ClientStore.Opened opened, Typed draft, Typed typed, String go) {
        Parsed<Limitation> parsed =
                entries.form().parseNew(typed, Ids.next(), practice.today(), holding(opened, draft));
        if (parsed.value().isEmpty()) {
            Typed kept = draft.with(typed.under(Entries.NEW));
            stores.drafts().keep(opened.id(), kept.values());
            ctx.status(422);
            show(ctx, base(opened.id()), opened.name(), Step.LIMITATIONS, intake(kept), parsed.faults());
            return;
        }
        stores.drafts()
                .keep(opened.id(), entries.added(draft, typed, practice.today()).values());
        Note.leave(ctx, "Taken down: " + Called.of(parsed.value().get()) + ".");
        ctx.redirect(base(opened.id()) + "/" + (go.equals("add") ? "limitations" : "check"));
    }

    /** What holds already and what was taken down before. */
    private List<Limitation> holding(ClientStore.Opened opened, Typed draft) {
        return Stream.concat(stores.limitations().of(opened.id()).stream(), entries.readable(draft).stream())
                .toList();
    }

    private void finish(Context ctx) {
        ClientStore.Opened opened = opened(ctx);
        Intake intake = intake(draft(opened.id()));
        List<CheckPage.Open> open = intake.open(base(opened.id()));
        if (!open.isEmpty()) {
            pages.refuse(ctx, "intake/check.jte", checkPage(opened, intake, open));
            return;
        }
        Client before = stores.clients().find(opened.id()).orElse(null);
        stores.clients().save(intake.client(opened.id(), before));
        entries.all(intake.typed()).forEach(each -> stores.limitations().add(opened.id(), each));
        stores.drafts().drop(opened.id());
        Note.leave(ctx, "The intake is finished.");
        ctx.redirect("/clients/" + opened.id().value());
    }

    private void show(Context ctx, String base, String name, Step step, Intake intake, Faults faults) {
        boolean whole = !base.equals(NEW)
                && stores.clients().find(new ClientId(base.split("/")[2])).isPresent();
        IntakePage page = new IntakePage(
                base,
                name,
                step,
                marks(intake, step),
                intake.asks(step, faults),
                faults,
                entries.told(intake.typed()),
                whole);
        pages.show(ctx, "intake/step.jte", page);
    }

    private CheckPage checkPage(ClientStore.Opened opened, Intake intake, List<CheckPage.Open> open) {
        return new CheckPage(
                base(opened.id()),
                opened.name(),
                marks(intake, Step.CHECK),
                intake.parts(),
                open,
                opened.whole(),
                urgent(opened, intake).orElse(null));
    }

    private static List<IntakePage.Mark> marks(Intake intake, Step here) {
        return Arrays.stream(Step.values())
                .map(step -> new IntakePage.Mark(step, step == here, intake.open(step)))
                .toList();
    }

    private Intake intake(Typed typed) {
        return new Intake(typed, entries, practice.today());
    }

    private Typed draft(ClientId id) {
        return stores.drafts()
                .find(id)
                .map(Typed::new)
                .or(() -> stores.clients().find(id).map(Intake::filled))
                .orElse(Typed.NOTHING);
    }

    private ClientStore.Opened opened(Context ctx) {
        return stores.clients().opened(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }

    private static Step step(Context ctx) {
        return Step.of(ctx.pathParam("step")).orElseThrow(NotFoundResponse::new);
    }

    private static String base(ClientId id) {
        return "/clients/" + id.value() + "/intake";
    }
}
