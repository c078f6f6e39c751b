package newel.web.program;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.DayOfWeek;
import java.util.Optional;
import newel.catalogue.Variant;
import newel.program.Editing;
import newel.program.WeekEdit;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.Typed;

/** Swapping an item along its stair or for another movement, and adding one to a part. */
public final class SwapRoutes implements Routes {
    private final Pages pages;
    private final Practice practice;
    private final Knowing knowing;
    private final Keeping keeping;
    private final SwapPages swapPages;

    public SwapRoutes(Pages pages, Stores stores, Practice practice) {
        this.pages = pages;
        this.practice = practice;
        this.knowing = new Knowing(stores, practice);
        this.keeping = new Keeping(pages, knowing);
        this.swapPages = new SwapPages(practice);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(Knowing.AT + "/items/{movement}", this::swapping);
        routes.post(Knowing.AT + "/items/{movement}/swap", this::swap);
        routes.get(Knowing.AT + "/blocks/{block}/addition", this::adding);
        routes.post(Knowing.AT + "/blocks/{block}/addition", this::add);
    }

    private void swapping(Context ctx) {
        Known known = knowing.known(ctx);
        DayOfWeek day = Knowing.day(ctx, known.program().newest());
        Variant now = knowing.variant(known, day, ctx.pathParam("movement"));
        pages.show(ctx, "program/swap.jte", swapPages.swap(known, day, now, Typed.NOTHING, ""));
    }

    private void swap(Context ctx) {
        Known known = knowing.known(ctx);
        DayOfWeek day = Knowing.day(ctx, known.program().newest());
        Variant now = knowing.variant(known, day, ctx.pathParam("movement"));
        Typed typed = Typed.of(ctx);
        WeekEdit edit = chosen(typed)
                .map(variant -> WeekEdit.ofItem(
                        known.program().newest(),
                        day,
                        now.movement(),
                        session -> editing(known).swap(session, now.movement(), variant, typed.one("override"))))
                .orElse(new WeekEdit.Refused("Choose the form that you want in its place."));
        if (edit instanceof WeekEdit.Refused refused) {
            pages.refuse(ctx, "program/swap.jte", swapPages.swap(known, day, now, typed, refused.why()));
        } else {
            keeping.keep(ctx, known, edit);
        }
    }

    private void adding(Context ctx) {
        Known known = knowing.known(ctx);
        DayOfWeek day = Knowing.day(ctx, known.program().newest());
        pages.show(ctx, "program/swap.jte", swapPages.add(known, day, block(ctx, known, day), Typed.NOTHING, ""));
    }

    private void add(Context ctx) {
        Known known = knowing.known(ctx);
        DayOfWeek day = Knowing.day(ctx, known.program().newest());
        int block = block(ctx, known, day);
        Typed typed = Typed.of(ctx);
        WeekEdit edit = chosen(typed)
                .map(variant -> WeekEdit.ofAddition(
                        known.program().newest(),
                        day,
                        variant.movement(),
                        session -> editing(known).add(session, block, variant, typed.one("override"))))
                .orElse(new WeekEdit.Refused("Choose what you want to add."));
        if (edit instanceof WeekEdit.Refused refused) {
            pages.refuse(ctx, "program/swap.jte", swapPages.add(known, day, block, typed, refused.why()));
        } else {
            keeping.keep(ctx, known, edit);
        }
    }

    private Optional<Variant> chosen(Typed typed) {
        return practice.catalogue().variant(typed.one("variant"));
    }

    private static int block(Context ctx, Known known, DayOfWeek day) {
        String text = ctx.pathParam("block");
        int block = text.matches("\\d{1,3}") ? Integer.parseInt(text) : Integer.MAX_VALUE;
        if (block >= known.program().newest().session(day).blocks().size()) {
            throw new NotFoundResponse();
        }
        return block;
    }

    private Editing editing(Known known) {
        return new Editing(practice.catalogue(), known.suiting());
    }
}
