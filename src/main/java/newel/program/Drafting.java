package newel.program;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.client.Client;
import newel.client.Experience;
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
        return drafted(catalogue, client, suiting, wish(client), 1, day, "First program after intake.");
    }

    /** The next version, composed anew from what is known today around what the instructor put there herself. */
    public static Version again(Catalogue catalogue, Client client, Suiting suiting, LocalDate day, Version before) {
        Wish wish = wish(client).withHand(Hand.in(before.session())).withRecent(done(before.session()));
        return drafted(catalogue, client, suiting, wish, before.number() + 1, day, "Drafted anew.")
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
                new Version(number, day, why, client.wishes().days(), made.session(), made.leftOut());
            case Composed.Refused refused ->
                new Version(number, day, why, client.wishes().days(), new Session(List.of()), List.of());
        };
        return new Drafted(version, composed);
    }

    public static Wish wish(Client client) {
        List<Goal> goals = client.wishes().goals();
        return Wish.of(
                goals.stream().map(Goal::purposes).toList(),
                client.wishes().minutes(),
                Levels.all(level(client.wishes().experience())));
    }

    private static Level level(Experience experience) {
        return switch (experience) {
            case NEW -> Level.BEGINNER;
            case SOME -> Level.PRACTISED;
            case REGULAR -> Level.REGULAR;
        };
    }

    private Drafting() {}
}
