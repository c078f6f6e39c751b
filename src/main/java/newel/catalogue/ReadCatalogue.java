package newel.catalogue;

import java.util.List;
import java.util.stream.Collectors;

/** What reading the catalogue gave: a catalogue without a flaw, or every flaw. */
public sealed interface ReadCatalogue {
    record Sound(Catalogue catalogue) implements ReadCatalogue {}

    record Broken(List<Flaw> flaws) implements ReadCatalogue {}

    /** The catalogue, or a stop that lists every flaw: nobody is served from broken data. */
    default Catalogue orStop() {
        return switch (this) {
            case Sound sound -> sound.catalogue();
            case Broken broken ->
                throw new IllegalStateException(broken.flaws().stream()
                        .map(Flaw::toString)
                        .collect(Collectors.joining("\n", "catalogue:\n", "")));
        };
    }
}
