package newel.figure;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import newel.body.Ground;
import newel.body.Posed;
import newel.body.Rot;
import newel.body.TrunkAt;
import newel.body.Vec;

/**
 * A tilt of the pelvis under a chest that keeps its direction, shown by an arc round the hips: behind them, or in front
 * where the back lies on a bed.
 *
 * @param degrees forward positive
 */
record Tilting(Posed end, double degrees) {
    private static final double LEAST = 5;
    /** A chest that turns by less than this share of the tilt keeps its direction. */
    private static final double CHEST = 0.4;
    /** Hips that go further than this are lifted or pushed, statures. */
    private static final double STAYS = 0.03;
    /** An arm or a leg that goes further by itself tells more, statures. */
    private static final double LIMBS = 0.05;

    private static final double DRAWN = 80;
    private static final double RADIUS = 0.115;
    private static final int STEPS = 16;

    static Optional<Tilting> in(Stretch stretch) {
        TrunkAt a = stretch.from().trunk();
        TrunkAt b = stretch.to().trunk();
        double degrees = forward(a.pelvisTurn(), b.pelvisTurn());
        boolean alone = Math.abs(degrees) >= LEAST
                && Math.abs(forward(a.thoraxTurn(), b.thoraxTurn())) < CHEST * Math.abs(degrees)
                && a.pelvis().distance(b.pelvis()) < STAYS
                && Leading.limbs(stretch) < LIMBS;
        return alone ? Optional.of(new Tilting(stretch.to(), degrees)) : Optional.empty();
    }

    /** How far the long axis tips towards what was in front. */
    private static double forward(Rot from, Rot to) {
        return Math.toDegrees(Math.atan2(to.y().dot(from.x()), to.y().dot(from.y())));
    }

    List<Spot> arc(Camera camera) {
        boolean behind = end.contacts().ground() != Ground.BED;
        Rot pelvis = end.trunk().pelvisTurn();
        Vec out = pelvis.x().times(behind ? -RADIUS : RADIUS);
        Vec up = pelvis.y().times(RADIUS);
        double sweep = Math.toRadians(behind ? DRAWN : -DRAWN) * Math.signum(degrees);
        return IntStream.rangeClosed(0, STEPS)
                .mapToDouble(i -> sweep * ((double) i / STEPS - .5))
                .mapToObj(angle ->
                        end.trunk().pelvis().plus(out.times(Math.cos(angle))).plus(up.times(Math.sin(angle))))
                .map(camera::see)
                .toList();
    }
}
