package newel.program;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.client.Client;
import newel.client.Goal;
import newel.compose.Composed;
import newel.compose.Composer;
import newel.compose.Hand;
import newel.compose.Item;
import newel.compose.Level;
import newel.compose.Levels;
import newel.compose.Session;
import newel.compose.Suiting;
import newel.compose.Wish;

/** The first version of a program for a client. */
public final class Drafting {
    /** A version and what composing said about it. */
    public record Drafted(Version version, Composed composed) {}

    public static Version first(Catalogue catalogue, Client client, Suiting suiting, LocalDate day) {
        return drafted(catalogue, client, suiting, day).version();
    }

    /** The first version with its proof and reasons. */
    public static Drafted drafted(Catalogue catalogue, Client client, Suiting suiting, LocalDate day) {
        Beginning beginning = Beginning.of(client, day);
        String why = ("First program after intake. " + beginning.why()).strip();
        return drafted(catalogue, client, suiting, wish(client, beginning.level()), 1, day, why);
    }

    /** The next version, composed anew from what is known today around what the instructor put there herself. */
    public static Version again(Catalogue catalogue, Client client, Suiting suiting, LocalDate day, Version before) {
        Beginning beginning = Beginning.of(client, day);
        Wish wish = wish(client, beginning.level())
                .withHand(Hand.in(before.firstSession()))
                .withRecent(done(before.firstSession()));
        String why = ("Drafted anew. " + beginning.why()).strip();
        return drafted(catalogue, client, suiting, wish, before.number() + 1, day, why)
                .version();
    }

    private static Map<String, Integer> done(Session session) {
        return session.items().collect(Collectors.toMap(Item::movement, item -> 1, Math::max));
    }

    private static Drafted drafted(
            Catalogue catalogue, Client client, Suiting suiting, Wish wish, int number, LocalDate day, String why) {
        Composed composed = new Composer(catalogue).compose(wish, suiting);
        Version version = switch (composed) {
            case Composed.Made made ->
                new Version(number, day, why, Version.on(client.wishes().days(), made.session()), made.leftOut());
            case Composed.Refused refused ->
                new Version(number, day, why, Version.on(client.wishes().days(), new Session(List.of())), List.of());
        };
        return new Drafted(version, composed);
    }

    public static Wish wish(Client client, Level level) {
        List<Goal> goals = client.wishes().goals();
        return Wish.of(
                goals.stream().map(Goal::purposes).toList(), client.wishes().minutes(), Levels.all(level));
    }

    private Drafting() {}
}
