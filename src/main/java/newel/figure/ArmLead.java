package newel.figure;

import java.util.List;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** How far an arm goes by itself: its palm, its elbow, or the shoulder blade that carries it. */
final class ArmLead {
    /** A point that goes less than this share of its way by itself is carried by what it hangs on. */
    private static final double BY_ITSELF = 0.45;
    /** An elbow that goes this much further than its hand tells more. */
    private static final double ELBOW = 1.6;
    /** A hand on a support that shifts less than this stays where it is, statures. */
    private static final double SHIFTS = 0.07;
    /** A shoulder that goes this far by its blade moves, statures. */
    private static final double BLADE = 0.012;

    private record Ends(Posed from, Posed to, Side side) {
        Vec palm() {
            return to.arm(side).palm().minus(from.arm(side).palm());
        }

        Vec elbow() {
            return to.arm(side).elbow().minus(from.arm(side).elbow());
        }

        Vec shoulder() {
            return to.arm(side).shoulder().minus(from.arm(side).shoulder());
        }

        /** By the shoulder blade alone. */
        Vec blade() {
            return shoulder().minus(to.trunk().midShoulders().minus(from.trunk().midShoulders()));
        }

        Hand.Hold before() {
            return from.contacts().hand(side).hold();
        }

        Hand.Hold after() {
            return to.contacts().hand(side).hold();
        }
    }

    static Way way(Stretch stretch, Side side) {
        Ends ends = new Ends(stretch.from(), stretch.to(), side);
        Piece.What part = Piece.What.arm(side);
        boolean stays = stays(ends);
        if (!stays
                && byItself(ends.palm(), ends.shoulder())
                && ends.elbow().length() < ELBOW * ends.palm().length()) {
            return Way.of(part, stretch, p -> p.arm(side).palm());
        }
        if (!fixed(ends)
                && byItself(ends.elbow(), ends.shoulder())
                && ends.elbow().length() > ELBOW * ends.palm().length()) {
            return Way.of(part, stretch, p -> p.arm(side).elbow());
        }
        return ends.blade().length()
                        > Math.max(BLADE, BY_ITSELF * ends.shoulder().length())
                ? Way.of(part, stretch, p -> p.arm(side).shoulder())
                : new Way(part, List.of());
    }

    private static boolean byItself(Vec moved, Vec root) {
        return moved.minus(root).length() >= BY_ITSELF * moved.length();
    }

    private static boolean stays(Ends ends) {
        return ends.before() == ends.after()
                && (ends.before() == Hand.Hold.THIGH
                        || ends.before() == Hand.Hold.HEAD
                        || ends.before().support() && ends.palm().length() < SHIFTS);
    }

    /** The hand stays on something that does not move with the person. */
    private static boolean fixed(Ends ends) {
        return ends.before() == ends.after() && (ends.before().support() || ends.before() == Hand.Hold.THIGH);
    }

    private ArmLead() {}
}
