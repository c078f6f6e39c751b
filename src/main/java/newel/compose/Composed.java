package newel.compose;

import java.util.List;

/** What composing comes to. */
public sealed interface Composed {
    /**
     * A session.
     *
     * @param leftOut movements that would have served and of which no form fits
     * @param why one for each item
     * @param givenUp wishes that could not be held, each with what stands against it
     */
    record Made(Session session, List<LeftOut> leftOut, Proof proof, List<Why> why, List<GivenUp> givenUp)
            implements Composed {
        public Made {
            leftOut = List.copyOf(leftOut);
            why = List.copyOf(why);
            givenUp = List.copyOf(givenUp);
        }
    }

    /** Nothing can be made: these cannot hold together, and none of them may be given up. */
    record Refused(List<String> conflict) implements Composed {
        public Refused {
            conflict = List.copyOf(conflict);
        }
    }
}
