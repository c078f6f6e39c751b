package newel.figure;

import java.util.List;
import newel.body.Ground;
import newel.body.Side;

/** How far a knee goes over a foot that stays. */
final class KneeLead {
    /** The foot goes less than this share of the knee's way. */
    private static final double STAYS = 0.4;

    /** Standing, a knee over its foot only bends under the body. */
    static Way way(Stretch stretch, Side side) {
        Way knee = Way.of(Piece.What.leg(side), stretch, p -> p.leg(side).knee());
        boolean stands = stretch.to().contacts().ground() == Ground.FEET;
        return stands || FootLead.way(stretch, side).length() > STAYS * knee.length()
                ? new Way(knee.part(), List.of())
                : knee;
    }

    private KneeLead() {}
}
