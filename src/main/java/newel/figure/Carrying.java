package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import newel.body.ArmAt;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Rot;
import newel.body.Side;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** Bags and bottles: in one hand each, or one thing in both when the hands are together. */
record Carrying(Brush brush, Posed posed, Set<Thing> things) {
    /** Palms nearer than this hold one thing between them, statures. */
    private static final double TOGETHER = 0.26;

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        if (together(Hand.Hold.BAG)) {
            pieces.add(bagInBoth());
        } else if (together(Hand.Hold.BOTTLE) && apart() < .1) {
            pieces.add(bottle(between(), posed.rightArm().hand().x()));
        } else {
            for (Side side : Side.values()) {
                inHand(pieces, side);
            }
        }
        return pieces;
    }

    private boolean together(Hand.Hold hold) {
        return Towel.both(posed, hold) && apart() < TOGETHER;
    }

    private double apart() {
        return posed.rightArm().palm().distance(posed.leftArm().palm());
    }

    private Vec between() {
        return posed.rightArm().palm().towards(posed.leftArm().palm(), .5);
    }

    private void inHand(List<Piece> pieces, Side side) {
        ArmAt arm = posed.arm(side);
        switch (posed.contacts().hand(side).hold()) {
            case BAG -> pieces.add(hanging(List.of(arm.palm(), arm.palm()), arm.palm()));
            case BOTTLE -> pieces.add(bottle(inFist(arm, side), arm.hand().x()));
            case TOWEL,
                    TOWEL_FOOT,
                    FREE,
                    CHAIR_BACK,
                    SEAT,
                    ARMREST,
                    COUNTER,
                    RAIL,
                    WALL,
                    FIST,
                    BED,
                    FLOOR,
                    LEG,
                    BAND,
                    BAND_FOOT,
                    THIGH,
                    HEAD,
                    OTHER_HAND -> {}
        }
    }

    private static Vec inFist(ArmAt arm, Side side) {
        return arm.palm().plus(arm.hand().z().times(-side.sign() * .010));
    }

    /** Held to the chest, or hanging from both hands. */
    private Piece bagInBoth() {
        Vec middle = between();
        if (things.contains(Thing.BAG_AT_CHEST)) {
            return Piece.thing(brush.depth(middle) - 1, body(middle.plus(new Vec(0, -.01, 0)), .045));
        }
        return hanging(List.of(posed.rightArm().palm(), posed.leftArm().palm()), middle);
    }

    /** Straight down from the fist, by two handles. */
    private Piece hanging(List<Vec> fists, Vec middle) {
        Vec top = middle.plus(new Vec(0, -.075, 0));
        List<Mark> marks = new ArrayList<>();
        for (int end : new int[] {-1, 1}) {
            Vec corner = top.plus(new Vec(end * .028, 0, 0));
            for (Vec fist : fists) {
                marks.add(brush.line(Tone.BAG, 2.4, fist, corner));
            }
        }
        marks.add(body(middle.plus(new Vec(0, -.125, 0)), .05));
        return new Piece(Piece.What.THING, brush.depth(middle) - 2, marks);
    }

    private Mark body(Vec middle, double halfHigh) {
        Ellipsoid top = new Ellipsoid(middle.plus(new Vec(0, halfHigh, 0)), Rot.NONE, .046, .010, .030);
        Ellipsoid bottom = new Ellipsoid(middle.plus(new Vec(0, -halfHigh + .01, 0)), Rot.NONE, .060, .018, .036);
        return brush.limb(Tone.BAG, top, bottom);
    }

    /** Lies across the fingers, its cap at the thumb. */
    private Piece bottle(Vec at, Vec up) {
        Vec cap = at.plus(up.times(.066));
        return Piece.thing(
                brush.depth(at) - .5,
                brush.limb(
                        Tone.BOTTLE,
                        Ellipsoid.ball(at.plus(up.times(.032)), .019),
                        Ellipsoid.ball(at.minus(up.times(.05)), .019)),
                brush.limb(
                        Tone.BOTTLE_CAP, Ellipsoid.ball(cap.minus(up.times(.012)), .010), Ellipsoid.ball(cap, .009)));
    }
}
