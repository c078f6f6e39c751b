package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.ArmAt;
import newel.body.Build;
import newel.body.Hand;
import newel.body.LegAt;
import newel.body.Posed;
import newel.body.Side;
import newel.body.TrunkAt;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/**
 * The person as round, tapering parts. Widths in statures after the body circumferences of ANSUR II divided by π, a little
 * fuller at the waist as in older age (design choice).
 */
final class Person {
    private final Camera camera;
    private final Posed posed;

    Person(Camera camera, Posed posed) {
        this.camera = camera;
        this.posed = posed;
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (Side side : Side.values()) {
            pieces.add(arm(side));
            pieces.add(leg(side));
        }
        pieces.add(trunk());
        pieces.add(new Head(camera, posed.trunk()).piece());
        return pieces;
    }

    private Piece trunk() {
        TrunkAt t = posed.trunk();
        Ellipsoid chest = new Ellipsoid(at(t.waist(), t, 0.012, 0.062), t.thoraxTurn(), 0.073, 0.075, 0.088);
        Ellipsoid belly = new Ellipsoid(
                t.waist().plus(t.lumbarTurn().of(new Vec(0.014, -0.025, 0))), t.lumbarTurn(), 0.076, 0.05, 0.086);
        Ellipsoid hips = new Ellipsoid(
                t.pelvis().plus(t.pelvisTurn().of(new Vec(-0.008, 0.022, 0))), t.pelvisTurn(), 0.078, 0.062, 0.09);
        List<Ellipsoid> upper = new ArrayList<>(List.of(chest, belly));
        for (Side side : Side.values()) {
            Vec shoulder = posed.arm(side).shoulder();
            upper.add(Ellipsoid.ball(shoulder.towards(t.midShoulders(), 0.22), 0.036));
        }
        return new Piece(
                Piece.What.TRUNK,
                camera.see(t.waist()).depth(),
                List.of(
                        limb(
                                Tone.SKIN,
                                Ellipsoid.ball(t.c7().plus(t.neckTurn().of(new Vec(0.012, 0, 0))), 0.036),
                                Ellipsoid.ball(t.skullBase(), 0.031)),
                        limb(Tone.TROUSERS, hips, new Ellipsoid(t.lumbosacral(), t.lumbarTurn(), 0.07, 0.03, 0.082)),
                        limb(
                                Tone.SHIRT,
                                belly,
                                new Ellipsoid(
                                        t.lumbosacral().plus(t.pelvisTurn().of(new Vec(0.012, -0.02, 0))),
                                        t.pelvisTurn(),
                                        0.077,
                                        0.03,
                                        0.088)),
                        new Mark.Outline(Tone.SHIRT, Solid.hull(camera, upper), true)));
    }

    private static Vec at(Vec from, TrunkAt t, double ahead, double up) {
        return from.plus(t.thoraxTurn().of(new Vec(ahead, up, 0)));
    }

    private Piece arm(Side side) {
        ArmAt a = posed.arm(side);
        boolean far = far(side);
        Vec sleeve = a.shoulder().towards(a.elbow(), 0.62);
        List<Mark> marks = new ArrayList<>();
        marks.add(limb(
                far ? Tone.SKIN_FAR : Tone.SKIN,
                ball(a.elbow(), .0255),
                ball(a.elbow().towards(a.wrist(), .28), .0275),
                ball(a.wrist(), .0165)));
        marks.add(limb(far ? Tone.SKIN_FAR : Tone.SKIN, ball(sleeve, .028), ball(a.elbow(), .0255)));
        marks.addAll(hand(a, side, far ? Tone.SKIN_FAR : Tone.SKIN));
        marks.add(limb(far ? Tone.SHIRT_FAR : Tone.SHIRT, ball(a.shoulder(), .037), ball(sleeve, .0335)));
        double depth = camera.see(a.elbow().towards(a.shoulder(), .4)).depth();
        return new Piece(Piece.What.arm(side), depth + camera.see(a.wrist()).depth() * 1e-3, marks);
    }

    /** Open along what it lies on, closed round what it holds. */
    private List<Mark> hand(ArmAt a, Side side, Tone skin) {
        Hand.Hold hold = posed.contacts().hand(side).hold();
        return switch (hold) {
            case TOWEL, TOWEL_FOOT, BAG, BOTTLE, BAND, BAND_FOOT, RAIL, CHAIR_BACK, ARMREST, FIST, LEG ->
                List.of(limb(skin, ball(a.wrist(), .0165), ball(a.wrist().towards(a.palm(), .9), .0235)));
            case FREE, HEAD, OTHER_HAND, WALL, COUNTER, SEAT, BED, FLOOR, THIGH ->
                List.of(
                        limb(skin, ball(a.wrist(), .016), ball(a.palm(), .0215), ball(a.fingertip(), .0095)),
                        limb(skin, ball(a.wrist().towards(a.palm(), .5), .012), ball(thumb(a, side), .0085)));
        };
    }

    private static Vec thumb(ArmAt a, Side side) {
        return a.palm().plus(a.hand().x().times(0.03));
    }

    private Piece leg(Side side) {
        LegAt l = posed.leg(side);
        Tone cloth = far(side) ? Tone.TROUSERS_FAR : Tone.TROUSERS;
        Vec calf = l.knee().towards(l.ankle(), .3).minus(l.shank().x().times(.008));
        Vec hem = l.knee().towards(l.ankle(), .9);
        List<Mark> marks = List.of(
                limb(far(side) ? Tone.SKIN_FAR : Tone.SKIN, ball(hem, .02), ball(l.ankle(), .021)),
                shoe(l, side),
                limb(cloth, ball(l.hip(), .058), ball(l.hip().towards(l.knee(), .4), .053), ball(l.knee(), .038)),
                limb(cloth, ball(l.knee(), .038), ball(calf, .036), ball(hem, .0275)));
        return new Piece(
                Piece.What.leg(side), camera.see(l.knee().towards(l.hip(), .25)).depth(), marks);
    }

    private Mark shoe(LegAt l, Side side) {
        Vec lift = l.foot().y();
        Vec aside = l.foot().z().times(.5 * Build.HALF_FOOT);
        Vec toe = posed.toe(side);
        List<Ellipsoid> round = List.of(
                ball(l.ankle(), .022),
                ball(l.heel().plus(lift.times(.014)).plus(l.foot().x().times(.008)), .0165),
                ball(l.ball().plus(lift.times(.013)).plus(aside), .0145),
                ball(l.ball().plus(lift.times(.013)).minus(aside), .0145),
                ball(toe.plus(lift.times(.010)).minus(l.foot().x().times(.008)), .0115));
        return new Mark.Outline(Tone.SHOE, Solid.hull(camera, round), true);
    }

    /** The side turned away from the viewer, if the two sides differ in depth at all. */
    private boolean far(Side side) {
        double here = camera.see(posed.trunk().hip(side)).depth();
        double there = camera.see(posed.trunk().hip(side.other())).depth();
        return here < there - 0.03 * Camera.SCALE;
    }

    private Mark limb(Tone tone, Ellipsoid... solids) {
        return new Mark.Outline(tone, Solid.hull(camera, List.of(solids)), true);
    }

    private static Ellipsoid ball(Vec centre, double radius) {
        return Ellipsoid.ball(centre, radius);
    }
}
