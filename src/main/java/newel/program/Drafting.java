package newel.program;

import java.time.LocalDate;
import java.util.List;
import newel.catalogue.Catalogue;
import newel.client.Client;
import newel.client.Goal;
import newel.compose.Draft;
import newel.compose.FirstDraft;
import newel.compose.Level;
import newel.compose.Suiting;
import newel.compose.Wish;

/** The first version of a program for a client. */
public final class Drafting {
    public static Version first(Catalogue catalogue, Client client, Suiting suiting, LocalDate day) {
        Beginning beginning = Beginning.of(client, day);
        Draft draft = new FirstDraft(catalogue).draft(wish(client, beginning.level()), suiting);
        return new Version(
                1,
                day,
                ("First program after intake. " + beginning.why()).strip(),
                Version.on(client.wishes().days(), draft.session()),
                draft.leftOut());
    }

    /** The next version, drafted anew from what is known today. */
    public static Version again(Catalogue catalogue, Client client, Suiting suiting, LocalDate day, Version before) {
        Version fresh = first(catalogue, client, suiting, day);
        String reason = ("Drafted anew. " + Beginning.of(client, day).why()).strip();
        return new Version(before.number() + 1, day, reason, fresh.sessions(), fresh.leftOut());
    }

    static Wish wish(Client client, Level level) {
        List<Goal> goals = client.wishes().goals();
        return new Wish(
                goals.stream().map(Goal::purposes).toList(), client.wishes().minutes(), level);
    }

    private Drafting() {}
}
