package newel.handout;

import newel.catalogue.Dose;
import newel.catalogue.Variant;

/**
 * How fast and how hard, in a client's words. Effort is told by talking: from 5 of 10 on one can talk and not sing (Nelson
 * et al. 2007, Circulation 116:1094; the talk from memory); whoever cannot talk does less.
 */
public final class PaceWords {
    private static final int TALKS_AND_CANNOT_SING = 5;
    /** Shorter ones are not worth counting (design choice). */
    private static final double SLOW = 3;

    /** Empty where nothing is counted, or where it goes fast. */
    public static String pace(Dose dose, Variant variant) {
        double seconds = variant.tempo().seconds();
        boolean counted = dose.repetitions() > 0 && dose.seconds() == 0 && seconds >= SLOW;
        return counted ? "About %d seconds each.".formatted(Math.round(seconds)) : "";
    }

    public static String effort(Variant variant) {
        return variant.effort() < TALKS_AND_CANNOT_SING
                ? "Easy: you could sing."
                : "You can talk, not sing. If you cannot talk, do fewer.";
    }

    private PaceWords() {}
}
