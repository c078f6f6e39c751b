package newel.web.intake;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import newel.client.ClientId;
import newel.store.ClientStore;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.form.Faults;
import newel.web.form.Typed;

/** Loads what a request about an intake is about, and shows its pages. */
record IntakePages(Pages pages, Stores stores, Practice practice, Entries entries) {
    static final String NEW = "/clients/new";

    Intake intake(Typed typed) {
        return new Intake(typed, entries, practice.today());
    }

    Typed draft(ClientId id) {
        return stores.drafts()
                .find(id)
                .map(Typed::new)
                .or(() -> stores.clients().find(id).map(Intake::filled))
                .orElse(Typed.NOTHING);
    }

    ClientStore.Opened opened(Context ctx) {
        return stores.clients().opened(new ClientId(ctx.pathParam("client"))).orElseThrow(NotFoundResponse::new);
    }

    static String base(ClientId id) {
        return "/clients/" + id.value() + "/intake";
    }

    void show(Context ctx, ClientStore.Opened opened, Step step, Intake intake, Faults faults) {
        boolean whole = stores.clients().find(opened.id()).isPresent();
        pages.show(ctx, "intake/step.jte", page(base(opened.id()), opened.name(), whole, step, intake, faults));
    }

    /** Before there is a client. */
    void showNew(Context ctx, Intake intake, Faults faults) {
        pages.show(ctx, "intake/step.jte", page(NEW, "", false, Step.PERSON, intake, faults));
    }

    private IntakePage page(String base, String name, boolean whole, Step step, Intake intake, Faults faults) {
        return new IntakePage(
                base,
                name,
                step,
                marks(intake, step),
                intake.asks(step, faults),
                faults,
                entries.told(intake.typed()),
                whole);
    }

    CheckPage check(ClientStore.Opened opened, Intake intake, List<CheckPage.Open> open) {
        return new CheckPage(
                base(opened.id()),
                opened.name(),
                marks(intake, Step.CHECK),
                intake.parts(),
                open,
                opened.whole(),
                urgent(opened, intake).orElse(null));
    }

    Optional<UrgentPage> urgent(ClientStore.Opened opened, Intake intake) {
        return intake.answered()
                .flatMap(answered -> UrgentPage.of(base(opened.id()), opened.name(), answered, practice));
    }

    private static List<IntakePage.Mark> marks(Intake intake, Step here) {
        return Arrays.stream(Step.values())
                .map(step -> new IntakePage.Mark(step, step == here, intake.open(step)))
                .toList();
    }

    static void onward(Context ctx, ClientStore.Opened opened, Step step, String go) {
        Step next = go.equals("back") ? step.before() : go.equals("check") ? Step.CHECK : step.next();
        ctx.redirect(base(opened.id()) + "/" + next.slug());
    }
}
