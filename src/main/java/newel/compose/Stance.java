package newel.compose;

import java.util.EnumSet;
import java.util.Set;
import newel.catalogue.Kit;
import newel.catalogue.Position;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;

/** What of an item matters to its neighbours: posture, things at hand, and the muscle groups that work most. */
record Stance(Posture posture, Set<Kit> kit, Set<Purpose> mains) {
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
        return new Stance(posture(variant.position()), variant.kit(), Set.copyOf(mains));
    }

    static Posture posture(Position position) {
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
                + (kit.containsAll(next.kit) ? 0 : Timing.FETCH_KIT);
    }

    /** Points lost on coming from here to there. */
    int penalty(Stance next, boolean inRound) {
        int lost = posture == next.posture ? 0 : Weight.CHANGE_POSITION.points();
        lost += kit.containsAll(next.kit) ? 0 : Weight.FETCH_KIT.points();
        if (inRound) {
            lost += Weight.SAME_MUSCLES.points()
                    * (int) mains.stream().filter(next.mains::contains).count();
        }
        return -lost;
    }
}
