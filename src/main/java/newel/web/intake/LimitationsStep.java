package newel.web.intake;

import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Stream;
import newel.limit.Called;
import newel.limit.Limitation;
import newel.store.ClientStore;
import newel.store.Ids;
import newel.web.Note;
import newel.web.form.Parsed;
import newel.web.form.Typed;

/** The step in which limitations are taken down one after another. */
record LimitationsStep(IntakePages intakes) {
    private static final String REMOVE = "remove-";

    void keep(Context ctx, ClientStore.Opened opened, Typed typed, String go) {
        Typed draft = intakes.draft(opened.id()).without(Entries.NEW);
        boolean begun = Entries.begun(typed);
        if (go.startsWith(REMOVE)) {
            remove(ctx, opened, draft, typed, go.substring(REMOVE.length()));
        } else if (go.equals("back") || !begun && !go.equals("add")) {
            keep(opened, begun ? draft.with(typed.under(Entries.NEW)) : draft);
            IntakePages.onward(ctx, opened, Step.LIMITATIONS, go);
        } else {
            add(ctx, opened, draft, typed, go);
        }
    }

    private void remove(Context ctx, ClientStore.Opened opened, Typed draft, Typed typed, String number) {
        Typed left = number.matches("\\d{1,3}") ? Entries.removed(draft, Integer.parseInt(number)) : draft;
        keep(opened, left.with(typed.under(Entries.NEW)));
        ctx.redirect(IntakePages.base(opened.id()) + "/" + Step.LIMITATIONS.slug());
    }

    private void add(Context ctx, ClientStore.Opened opened, Typed draft, Typed typed, String go) {
        Entries entries = intakes.entries();
        Parsed<Limitation> parsed =
                entries.form().parseNew(typed, Ids.next(), intakes.practice().today(), holding(opened, draft));
        if (parsed.value().isEmpty()) {
            Typed kept = draft.with(typed.under(Entries.NEW));
            keep(opened, kept);
            ctx.status(422);
            intakes.show(ctx, opened, Step.LIMITATIONS, intakes.intake(kept), parsed.faults());
            return;
        }
        keep(opened, entries.added(draft, typed, intakes.practice().today()));
        Note.leave(ctx, "Taken down: " + Called.of(parsed.value().get()) + ".");
        ctx.redirect(IntakePages.base(opened.id()) + "/" + (go.equals("add") ? Step.LIMITATIONS : Step.CHECK).slug());
    }

    /** What holds already and what was taken down before. */
    private List<Limitation> holding(ClientStore.Opened opened, Typed draft) {
        return Stream.concat(
                        intakes.stores().limitations().of(opened.id()).stream(),
                        intakes.entries().readable(draft).stream())
                .toList();
    }

    private void keep(ClientStore.Opened opened, Typed draft) {
        intakes.stores().drafts().keep(opened.id(), draft.values());
    }
}
