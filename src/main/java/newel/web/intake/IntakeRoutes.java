package newel.web.intake;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import newel.client.Client;
import newel.client.ClientId;
import newel.limit.Presets;
import newel.store.ClientStore;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.DateBoxes;
import newel.web.form.Faults;
import newel.web.form.Typed;

public final class IntakeRoutes implements Routes {
    private static final String AT = "/clients/{client}/intake";

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final Entries entries;
    private final IntakePages intakes;

    public IntakeRoutes(Pages pages, Stores stores, Practice practice, Presets presets) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.entries = new Entries(presets);
        this.intakes = new IntakePages(pages, stores, practice, entries);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(IntakePages.NEW, ctx -> intakes.showNew(ctx, intakes.intake(Typed.NOTHING), new Faults()));
        routes.post(IntakePages.NEW, this::open);
        routes.get(AT, ctx -> ctx.redirect(IntakePages.base(intakes.opened(ctx).id()) + "/" + Step.PERSON.slug()));
        routes.get(AT + "/urgent", this::urgent);
        routes.get(AT + "/{step}", this::ask);
        routes.post(AT + "/{step}", this::keep);
        routes.post(AT, this::finish);
    }

    /** The first page opens the client once it is in order; from then on everything is kept as it comes, right or wrong. */
    private void open(Context ctx) {
        Intake intake = intakes.intake(Typed.of(ctx));
        Faults faults = intake.faults(Step.PERSON);
        if (!faults.none()) {
            ctx.status(422);
            intakes.showNew(ctx, intake, faults);
            return;
        }
        ClientId id = stores.clients().open(intake.typed().one("person-name"));
        stores.drafts().keep(id, intake.typed().values());
        ctx.redirect(IntakePages.base(id) + "/home");
    }

    private void ask(Context ctx) {
        ClientStore.Opened opened = intakes.opened(ctx);
        Step step = step(ctx);
        Intake intake = intakes.intake(intakes.draft(opened.id()));
        if (step == Step.CHECK) {
            pages.show(ctx, "intake/check.jte", intakes.check(opened, intake, List.of()));
        } else {
            intakes.show(ctx, opened, step, step == Step.LIMITATIONS ? withToday(intake) : intake, new Faults());
        }
    }

    /** A new entry starts with today's date. */
    private Intake withToday(Intake intake) {
        Typed typed = intake.typed();
        return Entries.begun(typed)
                ? intake
                : intakes.intake(DateBoxes.fill(typed, Entries.NEW + "since", practice.today()));
    }

    /** Keeps what was typed, right or wrong, before anything else; going back asks for nothing. */
    private void keep(Context ctx) {
        ClientStore.Opened opened = intakes.opened(ctx);
        Step step = step(ctx);
        String go = Optional.ofNullable(ctx.formParam("go")).orElse("next");
        Typed typed = Typed.of(ctx).without("go");
        if (step == Step.LIMITATIONS) {
            new LimitationsStep(intakes).keep(ctx, opened, typed, go);
            return;
        }
        Typed draft = intakes.draft(opened.id()).without(step.prefix()).with(typed);
        stores.drafts().keep(opened.id(), draft.values());
        Intake intake = intakes.intake(draft);
        Faults faults = intake.faults(step);
        boolean back = go.equals("back");
        if (!back && !faults.none()) {
            ctx.status(422);
            intakes.show(ctx, opened, step, intake, faults);
            return;
        }
        rename(opened, draft, faults);
        if (step == Step.READINESS && !back && intakes.urgent(opened, intake).isPresent()) {
            ctx.redirect(IntakePages.base(opened.id()) + "/urgent");
        } else {
            IntakePages.onward(ctx, opened, step, go);
        }
    }

    /** What must be done before the intake goes on; the way on is left open. */
    private void urgent(Context ctx) {
        ClientStore.Opened opened = intakes.opened(ctx);
        Optional<UrgentPage> urgent = intakes.urgent(opened, intakes.intake(intakes.draft(opened.id())));
        if (urgent.isPresent()) {
            pages.show(ctx, "intake/urgent.jte", urgent.get());
        } else {
            ctx.redirect(IntakePages.base(opened.id()) + "/" + Step.LIMITATIONS.slug());
        }
    }

    private void rename(ClientStore.Opened opened, Typed draft, Faults faults) {
        String name = draft.one("person-name");
        if (!name.isEmpty() && faults.at("person-name").isEmpty() && !name.equals(opened.name()) && !opened.whole()) {
            stores.clients().rename(opened.id(), name);
        }
    }

    private void finish(Context ctx) {
        ClientStore.Opened opened = intakes.opened(ctx);
        Intake intake = intakes.intake(intakes.draft(opened.id()));
        List<CheckPage.Open> open = intake.open(IntakePages.base(opened.id()));
        if (!open.isEmpty()) {
            pages.refuse(ctx, "intake/check.jte", intakes.check(opened, intake, open));
            return;
        }
        Client before = stores.clients().find(opened.id()).orElse(null);
        stores.clients().save(intake.client(opened.id(), before));
        entries.all(intake.typed()).forEach(each -> stores.limitations().add(opened.id(), each));
        stores.drafts().drop(opened.id());
        Note.leave(ctx, "The intake is finished.");
        ctx.redirect("/clients/" + opened.id().value());
    }

    private static Step step(Context ctx) {
        return Step.of(ctx.pathParam("step")).orElseThrow(NotFoundResponse::new);
    }
}
