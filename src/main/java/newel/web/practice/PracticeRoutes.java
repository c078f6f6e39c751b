package newel.web.practice;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.practice.Settings;
import newel.screen.Choices;
import newel.store.AuditStore;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Routes;
import newel.web.form.Asking;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

public final class PracticeRoutes implements Routes {
    private static final String SUBJECT = "practice";

    private final Pages pages;
    private final Stores stores;

    public PracticeRoutes(Pages pages, Stores stores) {
        this.pages = pages;
        this.stores = stores;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/practice", this::ask);
        routes.post("/practice", this::keep);
    }

    private void ask(Context ctx) {
        Typed typed = stores.practice().settings().map(PracticeForm::fill).orElseGet(PracticeForm::nothingYet);
        pages.show(ctx, "practice/settings.jte", page(typed, new Faults()));
    }

    private PracticePage page(Typed typed, Faults faults) {
        List<String> changes =
                stores.audit().of(SUBJECT).stream().map(AuditStore.Line::dated).toList();
        return new PracticePage(PracticeForm.asks(new Asking(typed, faults)), faults, changes);
    }

    private void keep(Context ctx) {
        Typed typed = Typed.of(ctx);
        Parsed<Settings> parsed = PracticeForm.parse(typed);
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, "practice/settings.jte", page(typed, parsed.faults()));
            return;
        }
        Settings after = parsed.value().get();
        Optional<Settings> before = stores.practice().settings();
        stores.practice().save(after);
        changes(before, after).forEach(what -> stores.audit().write(SUBJECT, what));
        Note.leave(ctx, "The settings are kept.");
        ctx.redirect("/practice");
    }

    /** What may change results is written down one by one. */
    private static List<String> changes(Optional<Settings> before, Settings after) {
        if (before.isEmpty()) {
            return List.of("The practice was set up as " + after.name() + ".");
        }
        List<String> changes = new ArrayList<>();
        Choices was = before.get().choices();
        Choices now = after.choices();
        add(
                changes,
                "Pressure and pulse at rest",
                was.restSet().words(),
                now.restSet().words());
        add(changes, "Risk of falls", was.fallsSet().words(), now.fallsSet().words());
        add(
                changes,
                "Pain in exercise",
                was.painZones().words(),
                now.painZones().words());
        add(
                changes,
                "Muscle loss",
                before.get().consensus().words(),
                after.consensus().words());
        add(changes, "Country", before.get().country().name(), after.country().name());
        return changes;
    }

    private static void add(List<String> changes, String what, String was, String now) {
        if (!was.equals(now)) {
            changes.add("%s: was “%s”, is “%s”.".formatted(what, was, now));
        }
    }
}
