package newel.web.program;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import newel.catalogue.Movement;
import newel.program.Brief;
import newel.program.Drafted;
import newel.program.Version;
import newel.screen.Permission;
import newel.store.Stores;
import newel.web.Pages;
import newel.web.Practice;
import newel.web.Routes;
import newel.web.form.Faults;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** Composes a program again: other minutes, a movement always in or kept out, more of something. */
public final class BriefRoutes implements Routes {
    private final Practice practice;
    private final Knowing knowing;
    private final Keeping keeping;

    public BriefRoutes(Pages pages, Stores stores, Practice practice) {
        this.practice = practice;
        this.knowing = new Knowing(stores, practice);
        this.keeping = new Keeping(pages, knowing);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post(Knowing.AT + "/brief", this::whole);
        routes.post(Knowing.AT + "/items/{movement}/brief", this::one);
    }

    private void whole(Context ctx) {
        Known known = knowing.known(ctx);
        Typed typed = Typed.of(ctx);
        Parsed<Brief> parsed = new BriefForm(practice.catalogue()).parse(typed);
        Optional<Brief> brief = parsed.value();
        if (brief.isEmpty()) {
            Faults.Fault fault = parsed.faults().all().getFirst();
            keeping.refuse(ctx, known, new Refusal(fault.message(), Refusal.BRIEF, fault.field(), typed));
        } else {
            compose(ctx, known, brief.get(), typed);
        }
    }

    /** One movement of the session that is shown. */
    private void one(Context ctx) {
        Known known = knowing.known(ctx);
        Movement movement =
                practice.catalogue().movement(ctx.pathParam("movement")).orElseThrow(NotFoundResponse::new);
        Brief before = Knowing.brief(known, known.program().newest());
        Brief brief = switch (String.valueOf(ctx.formParam("wish"))) {
            case BriefForm.IN -> before.pinning(movement.id());
            case BriefForm.OUT -> before.banning(movement.id());
            case "free" -> before.free(movement.id());
            default -> throw new BadRequestResponse();
        };
        compose(ctx, known, brief, BriefForm.typed(brief));
    }

    private void compose(Context ctx, Known known, Brief brief, Typed typed) {
        if (known.screening().permission() == Permission.NOTHING) {
            keeping.refuse(ctx, known, Refusal.of("Nothing is composed while no exercise may be done."));
            return;
        }
        Version before = known.program().newest();
        String reason = new BriefWords(practice.catalogue()).changed(Knowing.brief(known, before), brief);
        switch (practice.drafting(known.client()).again(before, brief, reason)) {
            case Drafted.Made made -> keeping.keep(ctx, known, made.version(), reason);
            case Drafted.Refused refused ->
                keeping.refuse(
                        ctx,
                        known,
                        new Refusal(BriefWords.refused(refused.conflict()), Refusal.BRIEF, BriefForm.MINUTES, typed));
        }
    }
}
