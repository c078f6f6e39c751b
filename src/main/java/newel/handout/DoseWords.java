package newel.handout;

import newel.catalogue.Dose;
import newel.catalogue.Sides;

/** A dose in few words with its figures: "8 times on each side". */
public final class DoseWords {
    public static String of(Dose dose, Sides sides) {
        String once = once(dose, sides);
        boolean again = dose.sets() > 1;
        return again ? once + ", " + dose.sets() + " sets" : once;
    }

    private static String once(Dose dose, Sides sides) {
        if (dose.repetitions() == 0) {
            return timed(dose, sides);
        }
        String times = dose.repetitions() == 1 ? "1 time" : dose.repetitions() + " times";
        String held = dose.seconds() == 0 ? times : times + ", hold each for " + dose.seconds() + " seconds";
        return switch (sides) {
            case TOGETHER -> held;
            case EACH -> held + " on each side";
            case ALTERNATING ->
                dose.repetitions() + " in all, changing sides"
                        + (dose.seconds() == 0 ? "" : ", hold each for " + dose.seconds() + " seconds");
        };
    }

    private static String timed(Dose dose, Sides sides) {
        return switch (sides) {
            case TOGETHER, ALTERNATING -> dose.seconds() + " seconds";
            case EACH -> dose.seconds() + " seconds on each side";
        };
    }

    private DoseWords() {}
}
