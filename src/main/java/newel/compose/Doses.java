package newel.compose;

import java.util.function.Predicate;
import newel.catalogue.Dose;
import newel.catalogue.DoseRange;
import newel.catalogue.Kind;
import newel.catalogue.Variant;

/** The dose of a variant in a session. In rounds each pass is one set. */
public final class Doses {
    public static Dose beginner(Variant variant, Kind kind) {
        return inSession(kind, variant.dose().beginner());
    }

    /** @param fits whether this person's limits allow a dose; where they do not, it is the beginner's */
    static Dose of(Variant variant, Kind kind, Level level, Predicate<Dose> fits) {
        Dose dose = inSession(kind, range(variant.dose(), level));
        return level == Level.BEGINNER || fits.test(dose) ? dose : beginner(variant, kind);
    }

    /** The dose so far where it has the same form, but in nothing more than the new variant's beginner's dose. */
    public static Dose carried(Dose before, Variant variant, Kind kind) {
        Dose beginner = beginner(variant, kind);
        boolean sameForm = (before.repetitions() == 0) == (beginner.repetitions() == 0)
                && (before.seconds() == 0) == (beginner.seconds() == 0);
        return sameForm ? lesser(before, beginner) : beginner;
    }

    private static Dose lesser(Dose a, Dose b) {
        return new Dose(
                Math.min(a.sets(), b.sets()),
                Math.min(a.repetitions(), b.repetitions()),
                Math.min(a.seconds(), b.seconds()));
    }

    private static Dose range(DoseRange range, Level level) {
        return switch (level) {
            case BEGINNER -> range.beginner();
            case PRACTISED -> between(range.beginner(), range.later());
            case REGULAR -> range.later();
        };
    }

    private static Dose inSession(Kind kind, Dose dose) {
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
