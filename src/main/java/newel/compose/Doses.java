package newel.compose;

import newel.catalogue.Dose;
import newel.catalogue.DoseRange;
import newel.catalogue.Kind;
import newel.catalogue.Variant;

/** The dose to start a variant with. In rounds each pass is one set. */
final class Doses {
    static Dose of(Variant variant, Kind kind, Level level) {
        DoseRange range = variant.dose();
        Dose dose = switch (level) {
            case BEGINNER -> range.beginner();
            case PRACTISED -> between(range.beginner(), range.later());
            case REGULAR -> range.later();
        };
        return new Dose(sets(kind, dose), dose.repetitions(), dose.seconds());
    }

    private static int sets(Kind kind, Dose dose) {
        return switch (kind) {
            case STRENGTH, PULSE, MOBILITY, BREATH -> 1;
            case BALANCE, STRETCH -> Math.min(2, Math.max(1, dose.sets()));
        };
    }

    private static Dose between(Dose a, Dose b) {
        return new Dose(
                (a.sets() + b.sets()) / 2, (a.repetitions() + b.repetitions()) / 2, (a.seconds() + b.seconds()) / 2);
    }

    private Doses() {}
}
