package newel.figure;

import java.util.List;
import newel.body.Build;
import newel.body.LegAt;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** A leg in trousers, with its shoe. Half widths in statures after the circumferences of ANSUR II divided by 2π. */
record LegShape(Brush brush, Posed posed, Girth girth) {
    Piece piece(Side side, boolean far) {
        LegAt l = posed.leg(side);
        Tone cloth = far ? Tone.TROUSERS_FAR : Tone.TROUSERS;
        Vec calf = l.knee().towards(l.ankle(), .3).minus(l.shank().x().times(.008));
        Vec hem = l.knee().towards(l.ankle(), .9);
        List<Mark> marks = List.of(
                brush.limb(far ? Tone.SKIN_FAR : Tone.SKIN, Ellipsoid.ball(hem, .02), Ellipsoid.ball(l.ankle(), .021)),
                shoe(l, side),
                brush.limb(
                        cloth, ball(l.hip(), .057), ball(l.hip().towards(l.knee(), .4), .053), ball(l.knee(), .0385)),
                brush.limb(cloth, ball(l.knee(), .0385), ball(calf, .037), ball(hem, .029)));
        return new Piece(Piece.What.leg(side), brush.depth(l.knee().towards(l.hip(), .25)), marks);
    }

    private Mark shoe(LegAt l, Side side) {
        Vec lift = l.foot().y();
        Vec aside = l.foot().z().times(.5 * Build.HALF_FOOT);
        Vec ahead = l.foot().x();
        Vec heel = l.heel().plus(lift.times(.014)).plus(ahead.times(.008));
        Vec ball = l.ball().plus(lift.times(.013));
        Vec toe = posed.toe(side).plus(lift.times(.010)).minus(ahead.times(.008));
        return brush.limb(
                Tone.SHOE,
                Ellipsoid.ball(l.ankle(), .022),
                Ellipsoid.ball(heel, .0165),
                Ellipsoid.ball(ball.plus(aside), .0145),
                Ellipsoid.ball(ball.minus(aside), .0145),
                Ellipsoid.ball(toe, .0115));
    }

    private Ellipsoid ball(Vec centre, double radius) {
        return Ellipsoid.ball(centre, radius * girth.limbs());
    }
}
