package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Posed;
import newel.body.Rot;
import newel.body.Side;
import newel.body.TrunkAt;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/**
 * Neck, chest, belly and hips. Half widths in statures after the breadths and depths of ANSUR II, fuller at the waist and
 * rounder at the upper back as in older age (design choice).
 */
final class Torso {
    private final Brush brush;
    private final Posed posed;
    private final TrunkAt trunk;
    private final Look look;
    private final double wide;

    Torso(Brush brush, Posed posed, Look look) {
        this.brush = brush;
        this.posed = posed;
        this.trunk = posed.trunk();
        this.look = look;
        this.wide = look.girth().trunk();
    }

    /** The largest outline is last. */
    Piece piece() {
        List<Mark> marks = new ArrayList<>();
        marks.add(brush.limb(Tone.TROUSERS, hips(), seat()));
        marks.add(brush.limb(Tone.SHIRT, belly(), hem()));
        marks.add(neck());
        marks.add(brush.limb(Tone.SHIRT, upper()));
        return new Piece(Piece.What.TRUNK, brush.depth(trunk.waist()), marks);
    }

    private boolean woman() {
        return look.sex() == Look.Sex.WOMAN;
    }

    private Mark neck() {
        return brush.limb(
                Tone.SKIN,
                Ellipsoid.ball(at(trunk.c7(), trunk.neckTurn(), .012, 0, 0), .034 + .003 * wide),
                Ellipsoid.ball(Posture.head(posed).skullBase(), .030));
    }

    private Ellipsoid hips() {
        double half = woman() ? .094 : .087;
        return new Ellipsoid(
                at(trunk.pelvis(), trunk.pelvisTurn(), -.008, .022, 0),
                trunk.pelvisTurn(),
                .078 * wide,
                .062,
                half * wide);
    }

    private Ellipsoid seat() {
        return new Ellipsoid(trunk.lumbosacral(), trunk.lumbarTurn(), .07 * wide, .03, .082 * wide);
    }

    private Ellipsoid hem() {
        return new Ellipsoid(
                at(trunk.lumbosacral(), trunk.pelvisTurn(), .012, -.02, 0),
                trunk.pelvisTurn(),
                .077 * wide,
                .03,
                (woman() ? .09 : .087) * wide);
    }

    private Ellipsoid belly() {
        double out = look.girth().belly();
        return new Ellipsoid(
                at(trunk.waist(), trunk.lumbarTurn(), .014 * out, -.03, 0),
                trunk.lumbarTurn(),
                .074 * (wide + out) / 2,
                .05,
                .086 * wide);
    }

    private List<Ellipsoid> upper() {
        List<Ellipsoid> upper = new ArrayList<>(List.of(chest(), belly(), upperBack()));
        for (Side side : Side.values()) {
            Vec shoulder = posed.arm(side).shoulder();
            upper.add(Ellipsoid.ball(shoulder.towards(trunk.midShoulders(), .22), .035));
            if (woman()) {
                upper.add(Ellipsoid.ball(
                        at(trunk.waist(), trunk.thoraxTurn(), .052 * wide, .052, side.sign() * .036), .031 * wide));
            }
        }
        return upper;
    }

    private Ellipsoid chest() {
        double half = woman() ? .083 : .09;
        return new Ellipsoid(
                at(trunk.waist(), trunk.thoraxTurn(), .010, .062, 0),
                trunk.thoraxTurn(),
                .070 * wide,
                .075,
                half * wide);
    }

    /** The rounding below the neck. */
    private Ellipsoid upperBack() {
        return new Ellipsoid(
                at(trunk.waist(), trunk.thoraxTurn(), -.020, .100, 0), trunk.thoraxTurn(), .050 * wide, .048, .060);
    }

    private static Vec at(Vec from, Rot turn, double ahead, double up, double right) {
        return from.plus(turn.of(new Vec(ahead, up, right)));
    }
}
