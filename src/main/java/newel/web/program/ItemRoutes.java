package newel.web.program;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.DayOfWeek;
import java.util.function.Function;
import newel.catalogue.Dose;
import newel.compose.Session;
import newel.program.Edit;
import newel.program.Editing;
import newel.program.Version;
import newel.program.WeekEdit;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** One item of a program: its dose, its place, and taking it out. */
public final class ItemRoutes implements Routes {
    private static final String AT = Knowing.AT + "/items/{movement}";

    private final Practice practice;
    private final Knowing knowing;
    private final Keeping keeping;

    public ItemRoutes(Pages pages, Stores stores, Practice practice) {
        this.practice = practice;
        this.knowing = new Knowing(stores, practice);
        this.keeping = new Keeping(pages, knowing);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post(AT + "/dose", this::dose);
        routes.post(AT + "/move", this::move);
        routes.post(AT + "/removal", this::remove);
    }

    /** Faulty or too much: what was typed stays in its fields. */
    private void dose(Context ctx) {
        Known known = knowing.known(ctx);
        String movement = movement(ctx, known);
        Typed typed = Typed.of(ctx);
        Parsed<Dose> parsed = DoseForm.parse(typed);
        if (parsed.value().isEmpty()) {
            Faults.Fault fault = parsed.faults().all().getFirst();
            keeping.refuse(ctx, known, new Refusal(fault.message(), movement, fault.field(), typed));
            return;
        }
        Dose dose = parsed.value().get();
        WeekEdit edit = over(ctx, known, session -> editing(known).dose(session, movement, dose));
        if (edit instanceof WeekEdit.Refused refused) {
            keeping.refuse(ctx, known, new Refusal(refused.why(), movement, DoseForm.FIRST, typed));
        } else {
            keeping.keep(ctx, known, edit);
        }
    }

    private void move(Context ctx) {
        Known known = knowing.known(ctx);
        int by = "earlier".equals(ctx.formParam("where")) ? -1 : 1;
        String movement = movement(ctx, known);
        keeping.keep(ctx, known, over(ctx, known, session -> editing(known).move(session, movement, by)));
    }

    private void remove(Context ctx) {
        Known known = knowing.known(ctx);
        String movement = movement(ctx, known);
        keeping.keep(ctx, known, over(ctx, known, session -> editing(known).remove(session, movement)));
    }

    private Editing editing(Known known) {
        return new Editing(practice.catalogue(), known.suiting());
    }

    private String movement(Context ctx, Known known) {
        DayOfWeek day = Knowing.day(ctx, known.program().newest());
        return knowing.variant(known, day, ctx.pathParam("movement")).movement();
    }

    /** The change on every day that has the item as it is on the day that is shown. */
    private WeekEdit over(Context ctx, Known known, Function<Session, Edit> edit) {
        Version version = known.program().newest();
        return WeekEdit.ofItem(version, Knowing.day(ctx, version), movement(ctx, known), edit);
    }
}
