package newel.compose;

import java.util.List;
import java.util.Optional;

/**
 * What composing said about a session.
 *
 * @param proof of the session as it was composed
 * @param why one for each item that was chosen
 * @param givenUp wishes that could not be held
 * @param changed the session is no longer as it was composed, and the proof says nothing of it
 */
public record Account(Proof proof, List<Why> why, List<GivenUp> givenUp, boolean changed) {
    public Account {
        why = List.copyOf(why);
        givenUp = List.copyOf(givenUp);
    }

    public static Account of(Composed.Made made) {
        return new Account(made.proof(), made.why(), made.givenUp(), false);
    }

    public Account afterChange() {
        return new Account(proof, why, givenUp, true);
    }

    public Optional<Why> why(String movement) {
        return why.stream().filter(each -> each.movement().equals(movement)).findFirst();
    }
}
