package newel.web.intake;

import java.util.Collection;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.RedFlag;
import newel.store.Stores;
import newel.web.form.Choice;
import newel.web.form.Typed;

/** Takes a sign that came up outside an intake into the readiness answers, where it stays up until somebody changes it. */
public record Raising(Stores stores) {

    public void raise(Client client, Collection<RedFlag> flags) {
        if (flags.isEmpty()) {
            return;
        }
        Answers<RedFlag> raised = client.readiness().redFlags();
        for (RedFlag flag : flags) {
            raised = raised.with(flag, Answer.YES);
        }
        stores.clients().keepReadiness(client.id(), client.readiness().withRedFlags(raised));
        stores.drafts()
                .find(client.id())
                .ifPresent(draft -> stores.drafts()
                        .keep(client.id(), typed(new Typed(draft), flags).values()));
    }

    /** An intake that is being changed would otherwise lay its older answer over the sign. */
    private static Typed typed(Typed draft, Collection<RedFlag> flags) {
        Typed typed = draft;
        for (RedFlag flag : flags) {
            typed = typed.with("readiness-flag-" + Choice.of(flag), Choice.of(Answer.YES));
        }
        return typed;
    }
}
