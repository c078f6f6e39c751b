package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Posed;
import newel.body.Side;

/** The person as pieces: arms, legs, trunk and head. */
final class Person {
    /** Hips nearer together in depth than this, statures, are both near. */
    private static final double APART = 0.03;

    private final Brush brush;
    private final Posed posed;
    private final Look look;

    Person(Camera camera, Posed posed, Look look) {
        this.brush = new Brush(camera);
        this.posed = posed;
        this.look = look;
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (Side side : Side.values()) {
            pieces.addAll(new ArmShape(brush, posed, look.girth()).pieces(side, far(side)));
            pieces.add(new LegShape(brush, posed, look.girth()).piece(side, far(side)));
        }
        pieces.add(new Torso(brush, posed, look).piece());
        pieces.add(new Head(brush, Posture.head(posed), look).piece());
        return pieces;
    }

    /** The side turned away from the viewer, if the two sides differ in depth at all. */
    private boolean far(Side side) {
        double here = brush.depth(posed.trunk().hip(side));
        double there = brush.depth(posed.trunk().hip(side.other()));
        return here < there - APART * Camera.SCALE;
    }
}
