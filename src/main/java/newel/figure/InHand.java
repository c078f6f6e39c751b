package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.ArmAt;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** What the hands hold: towel, bag, bottle, band. */
final class InHand {
    private static final double TOWEL_WIDTH = 5.5;
    private static final double TAIL = 0.045;
    private static final double SLACK = 0.08;

    private final Camera camera;
    private final Posed posed;

    InHand(Camera camera, Posed posed) {
        this.camera = camera;
        this.posed = posed;
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        if (both(Hand.Hold.TOWEL)) {
            pieces.add(towel());
        }
        if (both(Hand.Hold.TOWEL_FOOT)) {
            pieces.add(roundTheFoot());
        }
        for (Side side : Side.values()) {
            ArmAt arm = posed.arm(side);
            switch (posed.contacts().hand(side).hold()) {
                case BAG -> pieces.add(bag(arm));
                case BOTTLE -> pieces.add(bottle(arm));
                case BAND_FOOT -> pieces.add(band(arm, side));
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
                        THIGH,
                        HEAD,
                        OTHER_HAND -> {}
            }
        }
        return pieces;
    }

    private boolean both(Hand.Hold hold) {
        return posed.contacts().rightHand().hold() == hold
                && posed.contacts().leftHand().hold() == hold;
    }

    /** Taut when it has a width, else sagging between the hands; its tails hang from the fists. */
    private Piece towel() {
        Vec right = posed.rightArm().palm();
        Vec left = posed.leftArm().palm();
        double sag = posed.contacts().towelWidth() > 0 ? 0 : SLACK;
        List<Spot> rope = new ArrayList<>();
        for (int i = 0; i <= 8; i++) {
            double t = i / 8.0;
            Vec at = right.towards(left, t).plus(Vec.UP.times(-4 * sag * t * (1 - t)));
            rope.add(camera.see(at));
        }
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Line(Tone.TOWEL, rope, TOWEL_WIDTH));
        for (Vec fist : List.of(right, left)) {
            Vec away = fist.minus(right.towards(left, .5)).unit().times(TAIL * .5);
            marks.add(new Mark.Line(
                    Tone.TOWEL,
                    List.of(camera.see(fist), camera.see(fist.plus(away).plus(Vec.UP.times(-TAIL)))),
                    TOWEL_WIDTH));
        }
        return new Piece(Piece.What.THING, camera.see(right.towards(left, .5)).depth() - 0.02 * Camera.SCALE, marks);
    }

    /** A towel loops round the sole of the foot that is further from the floor or further forward. */
    private Piece roundTheFoot() {
        Vec right = posed.rightLeg().ball();
        Vec left = posed.leftLeg().ball();
        Vec sole = right.x() + right.y() > left.x() + left.y() ? right : left;
        return Piece.thing(
                camera.see(sole).depth() + 2,
                new Mark.Line(
                        Tone.TOWEL,
                        List.of(
                                camera.see(posed.rightArm().palm()),
                                camera.see(sole),
                                camera.see(posed.leftArm().palm())),
                        TOWEL_WIDTH));
    }

    private Piece bag(ArmAt arm) {
        Vec top = arm.palm().plus(new Vec(0, -.07, 0));
        Vec bottom = arm.palm().plus(new Vec(0, -.16, 0));
        return Piece.thing(
                camera.see(bottom).depth() - 2,
                new Mark.Line(Tone.BAG, List.of(camera.see(arm.palm()), camera.see(top)), 2.5),
                new Mark.Outline(
                        Tone.BAG,
                        Solid.hull(
                                camera,
                                List.of(
                                        new Ellipsoid(top, newel.body.Rot.NONE, .045, .012, .03),
                                        new Ellipsoid(bottom, newel.body.Rot.NONE, .06, .02, .035))),
                        true));
    }

    private Piece bottle(ArmAt arm) {
        Vec along = arm.hand().z().times(.045);
        return Piece.thing(
                camera.see(arm.palm()).depth() - 2,
                new Mark.Outline(
                        Tone.BAG,
                        Solid.hull(
                                camera,
                                List.of(
                                        Ellipsoid.ball(arm.palm().plus(along), .02),
                                        Ellipsoid.ball(arm.palm().minus(along), .02))),
                        true));
    }

    private Piece band(ArmAt arm, Side side) {
        Vec foot = posed.leg(side).ball();
        return Piece.thing(
                camera.see(arm.palm()).depth() - 1,
                new Mark.Line(Tone.BAND, List.of(camera.see(arm.palm()), camera.see(foot)), 3));
    }
}
