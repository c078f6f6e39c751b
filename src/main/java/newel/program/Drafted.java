package newel.program;

import java.util.List;
import java.util.Optional;
import newel.compose.Week;

/** What drafting comes to. */
public sealed interface Drafted {
    /** @param week what composing said; days for which it could make nothing are not in the version */
    record Made(Version version, Week week) implements Drafted {}

    /** No day could be composed: these cannot hold together, and none of them may be given up. */
    record Refused(List<String> conflict) implements Drafted {
        public Refused {
            conflict = List.copyOf(conflict);
        }
    }

    default Optional<Version> made() {
        return this instanceof Made made ? Optional.of(made.version()) : Optional.empty();
    }
}
