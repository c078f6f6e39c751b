package newel.compose;

import java.util.List;
import java.util.Set;
import newel.catalogue.Dose;
import newel.catalogue.Kind;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.catalogue.Purposes;
import newel.catalogue.Region;
import newel.catalogue.Support;
import newel.catalogue.Variant;
import newel.limit.Lasts;

/**
 * A form of a movement that this person may be given, with its dose.
 *
 * @param item as it would stand in a session
 * @param loss training value lost against the wanted form
 * @param parts of a session that it may stand in
 * @param kept the instructor keeps it exactly so
 * @param serves how well it serves the goals, 0 to 1
 * @param work seconds of one pass
 */
record Option(
        Movement movement,
        Variant variant,
        Item item,
        double loss,
        Lasts lasts,
        Set<BlockKind> parts,
        boolean kept,
        double serves,
        Stance stance,
        int work) {
    /** From this weight on a group counts as worked. */
    static final int WORKED = 2;

    private static final int HARD_EFFORT = 5;
    /** Seconds of a repetition below which a movement is fast (design choice). */
    private static final double FAST = 2.5;

    String id() {
        return variant.id();
    }

    Kind kind() {
        return movement.kind();
    }

    Purposes purposes() {
        return variant.purposes();
    }

    Set<Region> mobility() {
        return purposes().mobility();
    }

    /** A load after which a muscle group rests for 48 hours: moderate effort or more (5 of 10, Nelson et al. 2007, from memory). */
    boolean hard() {
        return kind() == Kind.STRENGTH && variant.effort() >= HARD_EFFORT;
    }

    boolean lower() {
        return main(Purpose.LEGS) || main(Purpose.HIPS);
    }

    boolean upper() {
        return main(Purpose.BACK) || main(Purpose.CHEST) || main(Purpose.SHOULDERS) || main(Purpose.ARMS);
    }

    private boolean main(Purpose group) {
        return purposes().weight(group) >= Stance.MAIN;
    }

    boolean fast() {
        Dose dose = item.dose();
        return dose.repetitions() > 0 && variant.tempo().seconds() < FAST;
    }

    /** Ends a session: calm breathing, or a slow turn of the neck. */
    boolean calm() {
        boolean neckAlone = mobility().equals(Set.of(Region.NECK)) && purposes().weight(Purpose.BACK) == 0;
        return kind() == Kind.BREATH || kind() == Kind.MOBILITY && neckAlone;
    }

    /** Standing balance work with no more than a light touch. */
    boolean hardBalance() {
        return kind() == Kind.BALANCE
                && stance().posture() == Stance.Posture.STANDING
                && variant.support().compareTo(Support.FINGERTIPS) >= 0;
    }

    List<String> why() {
        return item.why();
    }
}
