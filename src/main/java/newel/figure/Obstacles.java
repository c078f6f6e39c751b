package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import newel.body.Foot;
import newel.body.Posed;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** What lies on the floor to be stepped over: ahead of the right foot where it starts, or beside it. */
record Obstacles(Brush brush, Set<Thing> things, List<Posed> keys) {
    /** From the ankle, half a foot's length beyond the toes. */
    private static final double AHEAD = 0.22;

    /** Between two rolls (by eye). */
    private static final double LONG_STEP = 0.42;

    private static final double BESIDE = 0.075;
    /** A rolled hand towel about 8 cm high (common practice). */
    private static final double ROLL = 0.025;

    private static final double CUSHION_HIGH = 0.094;

    List<Piece> pieces() {
        Foot start = keys.getFirst().contacts().rightFoot();
        Vec ahead = new Vec(start.x() + AHEAD, 0, 0);
        Vec beside = new Vec(start.x() + .03, 0, start.z() + BESIDE);
        List<Piece> pieces = new ArrayList<>();
        if (things.contains(Thing.ROLL_AHEAD)) {
            pieces.add(roll(ahead, new Vec(0, 0, .16)));
        }
        if (things.contains(Thing.SECOND_ROLL)) {
            pieces.add(roll(ahead.plus(new Vec(LONG_STEP, 0, 0)), new Vec(0, 0, .16)));
        }
        if (things.contains(Thing.ROLL_BESIDE)) {
            pieces.add(roll(beside, new Vec(.13, 0, 0)));
        }
        if (things.contains(Thing.FLAT_TOWEL_AHEAD)) {
            pieces.add(
                    new Box(ahead.x() - .03, ahead.x() + .03, 0, .008, -.16, .16).piece(brush, Tone.TOWEL, Tone.TOWEL));
        }
        if (things.contains(Thing.CUSHION_AHEAD)) {
            pieces.add(new Box(ahead.x() - .035, ahead.x() + .035, 0, CUSHION_HIGH, -.16, .16)
                    .piece(brush, Tone.CUSHION, Tone.CUSHION_TOP));
        }
        return pieces;
    }

    private Piece roll(Vec middle, Vec half) {
        Vec up = middle.plus(new Vec(0, ROLL, 0));
        return Piece.thing(
                brush.depth(middle),
                brush.limb(Tone.TOWEL, Ellipsoid.ball(up.plus(half), ROLL), Ellipsoid.ball(up.minus(half), ROLL)));
    }
}
