package newel.web.program;

import io.javalin.http.Context;
import newel.program.Version;
import newel.program.WeekEdit;
import newel.web.Note;
import newel.web.Pages;

/** Shows a program, and keeps a change as its next version. */
final class Keeping {
    private static final int STALE = 409;
    private static final int REFUSED = 422;

    private final Pages pages;
    private final Knowing knowing;
    private final ProgramPages programPages;

    Keeping(Pages pages, Knowing knowing) {
        this.pages = pages;
        this.knowing = knowing;
        this.programPages = new ProgramPages(knowing.stores(), knowing.practice());
    }

    void show(Context ctx, Known known, Version version, Refusal refusal) {
        String link = knowing.stores()
                .links()
                .of(known.program().id())
                .map(token -> "/h/" + token)
                .orElse("");
        pages.show(
                ctx, "program/show.jte", programPages.page(known, version, Knowing.day(ctx, version), refusal, link));
    }

    void refuse(Context ctx, Known known, Refusal refusal) {
        ctx.status(REFUSED);
        show(ctx, known, known.program().newest(), refusal);
    }

    /** The next version, unless somebody changed the program since the page was shown. */
    void keep(Context ctx, Known known, WeekEdit edit) {
        switch (edit) {
            case WeekEdit.Refused refused -> refuse(ctx, known, Refusal.of(refused.why()));
            case WeekEdit.Made made ->
                keep(
                        ctx,
                        known,
                        known.program().newest().next(knowing.practice().today(), made.reason(), made.sessions()),
                        made.reason());
        }
    }

    void keep(Context ctx, Known known, Version next, String done) {
        Version before = known.program().newest();
        boolean fresh = String.valueOf(before.number()).equals(ctx.formParam("version"));
        if (fresh && knowing.stores().programs().add(known.program().id(), next)) {
            String undo = Knowing.base(known.client()) + "/versions/" + before.number() + "/return";
            Note.leave(ctx, done + " This is version " + next.number() + ".", undo);
            ctx.redirect(Knowing.page(known, Knowing.day(ctx, next)));
        } else {
            stale(ctx);
        }
    }

    private void stale(Context ctx) {
        Known now = knowing.known(ctx);
        ctx.status(STALE);
        show(
                ctx,
                now,
                now.program().newest(),
                Refusal.of("The program was changed in the meantime. This is how it is now; make your change again."));
    }
}
