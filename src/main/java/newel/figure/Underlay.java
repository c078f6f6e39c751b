package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import newel.body.Furniture;
import newel.body.Ground;
import newel.body.LegAt;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** What lies under a leg or on the floor and goes with the pose. */
record Underlay(Brush brush, Posed posed, Set<Thing> things) {
    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        LegAt leg = posed.rightLeg();
        double surface = posed.contacts().ground() == Ground.BED ? Furniture.BED : 0;
        if (things.contains(Thing.ROLL_UNDER_KNEE)) {
            pieces.add(Soft.roll(brush, leg.knee(), surface));
        }
        if (things.contains(Thing.ROLL_UNDER_CALF)) {
            pieces.add(Soft.roll(brush, leg.knee().towards(leg.ankle(), .65), surface));
        }
        if (things.contains(Thing.TOWEL_UNDER_FOOT)) {
            pieces.add(Soft.underFoot(brush, leg, Side.RIGHT));
        }
        if (things.contains(Thing.TOWEL_UNDER_HAND)) {
            pieces.add(Soft.underHand(brush, posed.rightArm().palm()));
        }
        if (things.contains(Thing.BAG_ON_FLOOR)) {
            pieces.add(Soft.bagOnFloor(brush, new Vec(.10, 0, .20)));
        }
        if (things.contains(Thing.LINE)) {
            pieces.add(new Piece(
                    Piece.What.THING,
                    Piece.FIRST,
                    List.of(brush.line(Tone.TAPE, 3, new Vec(-.5, 0, 0), new Vec(.7, 0, 0)))));
        }
        return pieces;
    }
}
