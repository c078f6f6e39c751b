package newel.catalogue;

import java.util.stream.Stream;

/** Doses are ones that a person can do, and the later dose is no smaller than the first. */
final class SoundDose implements Rule {
    /** Three sets are the most that the statement for older adults gives (Fragala 2019, NSCA). */
    private static final int MOST_SETS = 3;
    /** Five minutes without a break (design choice). */
    private static final int MOST_SECONDS = 300;

    @Override
    public Stream<Flaw> flaws(Movement movement) {
        return movement.variants().stream().flatMap(SoundDose::flaws);
    }

    private static Stream<Flaw> flaws(Variant variant) {
        Dose beginner = variant.dose().beginner();
        Dose later = variant.dose().later();
        Stream.Builder<String> flaws = Stream.builder();
        if (!sane(beginner) || !sane(later)) {
            flaws.add("a dose needs 1 to 3 sets and repetitions or seconds: " + beginner + ", " + later);
        }
        if (volume(later) < volume(beginner)) {
            flaws.add("the later dose is smaller than the first");
        }
        if (variant.dose().beginner().repetitions() > 0 && variant.tempo().seconds() <= 0) {
            flaws.add("repetitions need a tempo");
        }
        if (variant.coordination() < 1 || variant.coordination() > 3) {
            flaws.add("coordination is 1, 2 or 3, not " + variant.coordination());
        }
        if (variant.effort() < 0 || variant.effort() > 10) {
            flaws.add("effort is 0 to 10, not " + variant.effort());
        }
        return flaws.build().map(what -> Rule.flaw(variant, what));
    }

    private static boolean sane(Dose dose) {
        return dose.sets() >= 1
                && dose.sets() <= MOST_SETS
                && dose.repetitions() >= 0
                && dose.seconds() >= 0
                && dose.seconds() <= MOST_SECONDS
                && dose.repetitions() + dose.seconds() > 0;
    }

    private static int volume(Dose dose) {
        return dose.sets() * Math.max(1, dose.repetitions()) * Math.max(1, dose.seconds());
    }
}
