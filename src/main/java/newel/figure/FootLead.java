package newel.figure;

import java.util.List;
import newel.body.Foot;
import newel.body.Side;

/** How far a foot goes, and whether it tips on its heel or its ball. */
final class FootLead {
    /** Degrees. */
    private static final double TIPS = 4;

    static Way way(Stretch stretch, Side side) {
        return Leading.furthest(
                Piece.What.leg(side),
                stretch,
                List.of(
                        p -> p.leg(side).ankle(),
                        p -> p.leg(side).ball(),
                        p -> p.leg(side).heel()));
    }

    /** On the floor before and after, and tipped between. */
    static boolean tips(Stretch stretch, Side side) {
        Foot before = stretch.from().contacts().foot(side);
        Foot after = stretch.to().contacts().foot(side);
        return before.placed() && after.placed() && Math.abs(after.pitch() - before.pitch()) > TIPS;
    }

    private FootLead() {}
}
