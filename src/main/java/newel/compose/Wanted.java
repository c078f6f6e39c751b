package newel.compose;

import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.catalogue.Variant;

/** Which variant of a movement to wish for before any limit is looked at. */
final class Wanted {
    static Variant of(Catalogue catalogue, Movement movement, Level level) {
        Variant reference = catalogue.variant(movement.reference()).orElseThrow();
        return switch (level) {
            case BEGINNER, PRACTISED -> reference;
            case REGULAR -> catalogue.harder(reference).stream().findFirst().orElse(reference);
        };
    }

    private Wanted() {}
}
