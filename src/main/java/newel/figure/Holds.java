package newel.figure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import newel.body.Contacts;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** What the hands meet over all key poses. */
record Holds(List<Posed> keys) {
    Stream<Contacts> contacts() {
        return keys.stream().map(Posed::contacts);
    }

    Optional<Vec> at(Hand.Hold hold) {
        return at(hold, Side.RIGHT).or(() -> at(hold, Side.LEFT));
    }

    /** Where a hand first meets this thing. */
    Optional<Vec> at(Hand.Hold hold, Side side) {
        return contacts()
                .map(c -> c.hand(side))
                .filter(hand -> hand.hold() == hold)
                .map(Hand::at)
                .findFirst();
    }
}
