package newel.figure;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import newel.body.Contacts;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/**
 * Which side begins where sides take turns. An arm often swings with the other leg, so a turn decides before a leg, a leg
 * before an arm.
 */
final class FirstSide {
    /** Moves of less than this many statures decide nothing. */
    private static final double MOVES = 0.01;
    /** The limb of the other side goes less than this share of the way. */
    private static final double OTHER = 0.75;
    /** What sways to a side goes at least this far to it, statures. */
    private static final double SWAYS = 0.012;

    static Optional<Side> of(List<Stretch> stretches) {
        return stretches.stream().flatMap(stretch -> of(stretch).stream()).findFirst();
    }

    private static Optional<Side> of(Stretch stretch) {
        return begun(stretch)
                .or(() -> turned(stretch))
                .or(() -> further(side -> FootLead.way(stretch, side)))
                .or(() -> swayed(stretch, p -> p.rightLeg().knee()))
                .or(() -> further(side -> ArmLead.way(stretch, side)))
                .or(() -> swayed(stretch, p -> p.trunk().crown()))
                .or(() -> risen(stretch));
    }

    /** A foot that stands higher from the start has begun. */
    private static Optional<Side> begun(Stretch stretch) {
        Contacts start = stretch.from().contacts();
        boolean stand = start.rightFoot().placed() && start.leftFoot().placed();
        double higher = start.rightFoot().height() - start.leftFoot().height();
        return stand && higher != 0 ? Optional.of(towards(higher)) : Optional.empty();
    }

    /** Of two hands that go as far, as in wringing, the one that rises. */
    private static Optional<Side> risen(Stretch stretch) {
        double right = rise(stretch, Side.RIGHT);
        double left = rise(stretch, Side.LEFT);
        return Math.abs(right - left) < MOVES ? Optional.empty() : Optional.of(towards(right - left));
    }

    private static double rise(Stretch stretch, Side side) {
        return stretch.to().arm(side).palm().y()
                - stretch.from().arm(side).palm().y();
    }

    private static Optional<Side> turned(Stretch stretch) {
        return Turning.between(stretch.from(), stretch.to()).map(turn -> towards(turn.degrees()));
    }

    private static Optional<Side> further(Function<Side, Way> way) {
        double right = way.apply(Side.RIGHT).length();
        double left = way.apply(Side.LEFT).length();
        double most = Math.max(right, left);
        return most < MOVES || Math.min(right, left) > OTHER * most
                ? Optional.empty()
                : Optional.of(towards(right - left));
    }

    /** To the side of the person that a point of the middle, or of both legs alike, goes to. */
    private static Optional<Side> swayed(Stretch stretch, Function<Posed, Vec> point) {
        double aside =
                point.apply(stretch.to()).z() - point.apply(stretch.from()).z();
        return Math.abs(aside) < SWAYS ? Optional.empty() : Optional.of(towards(aside));
    }

    private static Side towards(double rightward) {
        return rightward > 0 ? Side.RIGHT : Side.LEFT;
    }

    private FirstSide() {}
}
