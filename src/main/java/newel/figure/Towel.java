package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import newel.body.Hand;
import newel.body.LegAt;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/**
 * A towel: taut at its held length, sagging when the hands come nearer, or looped round a foot or a thigh.
 *
 * @param length between the hands when it is taut, statures
 */
record Towel(Brush brush, Posed posed, Set<Thing> things, double length) {
    private static final double WIDTH = 7;
    private static final double ROLL = 0.028;
    private static final double TAIL = 0.055;

    /** The hands' greatest distance over all key poses: a towel does not stretch. */
    static double length(List<Posed> keys) {
        return keys.stream()
                .filter(posed -> both(posed, Hand.Hold.TOWEL))
                .mapToDouble(posed ->
                        posed.rightArm().palm().distance(posed.leftArm().palm()))
                .max()
                .orElse(0);
    }

    static boolean both(Posed posed, Hand.Hold hold) {
        return posed.contacts().rightHand().hold() == hold
                && posed.contacts().leftHand().hold() == hold;
    }

    List<Piece> pieces() {
        if (both(posed, Hand.Hold.TOWEL_FOOT)) {
            return List.of(roundTheFoot());
        }
        if (!both(posed, Hand.Hold.TOWEL)) {
            return Stream.of(Side.values())
                    .filter(side -> posed.contacts().hand(side).hold() == Hand.Hold.TOWEL_FOOT)
                    .map(this::roundTheAnkle)
                    .toList();
        }
        if (things.contains(Thing.TOWEL_ROLL_IN_HANDS)) {
            return List.of(rolled());
        }
        return List.of(things.contains(Thing.TOWEL_BEHIND_THIGH) ? behindTheThigh() : between());
    }

    private Piece between() {
        Vec right = posed.rightArm().palm();
        Vec left = posed.leftArm().palm();
        List<Vec> rope = Catenary.between(right, left, length);
        List<Mark> marks = new ArrayList<>(cloth(rope));
        Vec middle = right.towards(left, .5);
        tail(marks, right, right.minus(middle).unit());
        tail(marks, left, left.minus(middle).unit());
        return new Piece(Piece.What.THING, brush.depth(rope.get(rope.size() / 2)) - 1, marks);
    }

    /** A roll held upright between the palms. */
    private Piece rolled() {
        Vec middle = posed.rightArm().palm().towards(posed.leftArm().palm(), .5);
        Vec up = new Vec(0, .075, 0);
        return Piece.thing(
                brush.depth(middle) - 1,
                brush.limb(Tone.TOWEL, Ellipsoid.ball(middle.plus(up), ROLL), Ellipsoid.ball(middle.minus(up), ROLL)));
    }

    /** What is left over hangs out of the fist. */
    private void tail(List<Mark> marks, Vec fist, Vec away) {
        Vec out = fist.plus(away.times(.018));
        Vec end = out.plus(away.times(.012)).plus(Vec.UP.times(-TAIL));
        marks.addAll(cloth(List.of(fist, out, end)));
        Vec stripe = out.towards(end, .75);
        Vec across = brush.camera().right().times(.012);
        marks.add(brush.line(Tone.TOWEL_EDGE, 1.4, stripe.minus(across), stripe.plus(across)));
    }

    private List<Mark> cloth(List<Vec> along) {
        return List.of(brush.line(Tone.PAPER, WIDTH + 2.4, along), brush.line(Tone.TOWEL, WIDTH, along));
    }

    /** Under the sole of the foot that is further from the floor or further forward. */
    private Piece roundTheFoot() {
        LegAt leg = posed.reachedOut();
        Vec sole = leg.heel().towards(leg.ball(), .8).minus(leg.foot().y().times(.004));
        Vec aside = leg.foot().z().times(.03);
        Vec up = leg.foot().y().times(.02);
        return Piece.thing(
                brush.depth(sole) + 8,
                brush.line(
                        Tone.TOWEL,
                        WIDTH,
                        posed.rightArm().palm(),
                        sole.plus(aside).plus(up),
                        sole.plus(aside),
                        sole.minus(aside),
                        sole.minus(aside).plus(up),
                        posed.leftArm().palm()));
    }

    /** Both ends in one hand, round the ankle of the same side. */
    private Piece roundTheAnkle(Side side) {
        LegAt leg = posed.leg(side);
        Vec ankle = leg.ankle().towards(leg.knee(), .06);
        Vec ahead = leg.shank().x().times(.026);
        Vec palm = posed.arm(side).palm();
        List<Mark> marks = new ArrayList<>(cloth(List.of(palm, ankle.minus(ahead))));
        marks.addAll(cloth(List.of(palm, ankle.plus(ahead), ankle.minus(ahead))));
        return new Piece(Piece.What.THING, Math.max(brush.depth(ankle), brush.depth(palm)) + 8, marks);
    }

    /** Behind the thigh that is drawn up further. */
    private Piece behindTheThigh() {
        LegAt leg = posed.rightLeg().knee().y() > posed.leftLeg().knee().y() ? posed.rightLeg() : posed.leftLeg();
        Side side = leg == posed.rightLeg() ? Side.RIGHT : Side.LEFT;
        Vec behind = leg.hip().towards(leg.knee(), .72).minus(leg.thigh().x().times(.055));
        Vec out = leg.thigh().z().times(.045 * side.sign());
        return Piece.thing(
                brush.depth(behind) - 4,
                brush.line(
                        Tone.TOWEL,
                        WIDTH,
                        posed.arm(side).palm(),
                        behind.plus(out),
                        behind.minus(out),
                        posed.arm(side.other()).palm()));
    }
}
