package newel.compose;

import java.util.EnumSet;
import java.util.Set;
import newel.catalogue.Kit;
import newel.catalogue.Position;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;

/**
 * What of an item matters to its neighbours: posture, where one is, what is in the hands, and the muscle groups that work
 * most. A chair stands wherever one is.
 */
record Stance(Posture posture, Set<Kit> place, Set<Kit> inHand, Set<Purpose> mains) {
    private static final Set<Kit> PLACES = EnumSet.of(Kit.WALL, Kit.COUNTER, Kit.STEP, Kit.STAIRS, Kit.BED);
    private static final Set<Kit> THINGS = EnumSet.of(Kit.TOWEL, Kit.CUSHION, Kit.BAG, Kit.BOTTLE, Kit.BAND);

    /** From this weight on a group is the main one of a movement. */
    static final int MAIN = 3;

    enum Posture {
        LYING,
        SITTING,
        STANDING,
        FLOOR
    }

    static Stance of(Variant variant) {
        EnumSet<Purpose> mains = EnumSet.noneOf(Purpose.class);
        for (Purpose purpose : Purpose.values()) {
            if (purpose.muscleGroup() && variant.purposes().weight(purpose) >= MAIN) {
                mains.add(purpose);
            }
        }
        return new Stance(posture(variant.position()), of(variant, PLACES), of(variant, THINGS), mains);
    }

    private static Set<Kit> of(Variant variant, Set<Kit> which) {
        EnumSet<Kit> kit = EnumSet.noneOf(Kit.class);
        kit.addAll(which);
        kit.retainAll(variant.kit());
        return kit;
    }

    private static Posture posture(Position position) {
        return switch (position) {
            case LYING -> Posture.LYING;
            case SEATED_BACK, SEATED_EDGE -> Posture.SITTING;
            case STANDING, STEPPING -> Posture.STANDING;
            case FLOOR -> Posture.FLOOR;
        };
    }

    /** Seconds to come from here to there. */
    int change(Stance next) {
        return (posture == next.posture ? 0 : Timing.CHANGE_POSITION)
                + (place.equals(next.place) ? 0 : Timing.CHANGE_PLACE)
                + (inHand.containsAll(next.inHand) ? 0 : Timing.TAKE_UP);
    }

    /** Points lost on coming from here to there. */
    int penalty(Stance next, boolean inRound) {
        int lost = posture == next.posture ? 0 : Weight.CHANGE_POSITION.points();
        lost += place.equals(next.place) ? 0 : Weight.CHANGE_PLACE.points();
        lost += inHand.containsAll(next.inHand) ? 0 : Weight.TAKE_UP.points();
        if (inRound) {
            lost += Weight.SAME_MUSCLES.points()
                    * (int) mains.stream().filter(next.mains::contains).count();
        }
        return -lost;
    }
}
