package newel.web.source;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import newel.practice.Rulebook;
import newel.practice.SignOff;
import newel.practice.SignOffs;
import newel.source.Statement;
import newel.store.Stores;
import newel.web.Note;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.Asking;
import newel.web.form.DateBoxes;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** Signing rules off for the practice, by name, and taking that back. */
public final class SignOffRoutes implements Routes {
    private static final String AT = "/practice/sign-off";
    private static final String SUBJECT = "practice";

    private final Pages pages;
    private final Stores stores;
    private final Practice practice;
    private final Rulebook rulebook;

    public SignOffRoutes(Pages pages, Stores stores, Practice practice, Rulebook rulebook) {
        this.pages = pages;
        this.stores = stores;
        this.practice = practice;
        this.rulebook = rulebook;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(AT, this::ask);
        routes.post(AT, this::sign);
        routes.post(AT + "/withdrawal", this::takeBack);
    }

    private void ask(Context ctx) {
        LocalDate today = practice.today();
        pages.show(ctx, "source/signoff.jte", page(DateBoxes.fill(Typed.NOTHING, "sign-on", today), new Faults()));
    }

    private SignOffPage page(Typed typed, Faults faults) {
        SignOffs signOffs = stores.signOffs().all();
        return new SignOffPage(
                SourceLines.of(rulebook, signOffs),
                Set.copyOf(typed.all(SignOffPage.RULES)),
                typed.has(SignOffPage.EVERY, "yes"),
                SignOffForm.asks(new Asking(typed, faults)),
                faults,
                SourceLines.signed(rulebook, signOffs),
                rulebook.all().size());
    }

    private void sign(Context ctx) {
        Typed typed = Typed.of(ctx);
        Parsed<List<SignOff>> parsed = SignOffForm.parse(typed, rulebook, practice.today());
        if (parsed.value().isEmpty()) {
            pages.refuse(ctx, "source/signoff.jte", page(typed, parsed.faults()));
            return;
        }
        List<SignOff> signed = parsed.value().get();
        stores.signOffs().add(signed);
        SignOff first = signed.getFirst();
        String what = "%s signed off by %s, %s.".formatted(rules(signed.size()), first.who(), first.role());
        stores.audit().write(SUBJECT, what);
        Note.leave(ctx, what);
        ctx.redirect("/sources");
    }

    private void takeBack(Context ctx) {
        List<String> ids = SignOffForm.chosen(Typed.of(ctx), rulebook).stream()
                .map(Statement::rule)
                .map(rule -> rule.id())
                .toList();
        stores.signOffs().takeBack(ids);
        String what = ids.isEmpty()
                ? "Nothing was taken back: no rule was ticked."
                : "The sign-off of " + rules(ids.size()) + " was taken back.";
        if (!ids.isEmpty()) {
            stores.audit().write(SUBJECT, what);
        }
        Note.leave(ctx, what);
        ctx.redirect(AT);
    }

    private static String rules(int count) {
        return count == 1 ? "1 rule" : count + " rules";
    }
}
