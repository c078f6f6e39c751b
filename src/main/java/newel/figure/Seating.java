package newel.figure;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import newel.body.Contacts;
import newel.body.Furniture;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Vec;

/** The chair of a scene and who sits on it, from all its key poses. */
final class Seating {
    /** Back rest behind the hip centres of someone sitting back; someone at the edge sits this much further forward. */
    private static final double BACK_REST = 0.095;

    private static final double FORWARD = 0.10;
    private static final double CHAIR_BEHIND = 0.20;

    private final Set<Thing> things;
    private final List<Posed> keys;
    private final Holds holds;

    Seating(Set<Thing> things, List<Posed> keys) {
        this.things = things;
        this.keys = keys;
        this.holds = new Holds(keys);
    }

    /** The chair that is sat on, held, or near. */
    Optional<Chair> chair() {
        return sitting()
                .map(this::seat)
                .or(() -> holds.at(Hand.Hold.CHAIR_BACK).map(Seating::chairHeld))
                .or(() -> holds.at(Hand.Hold.SEAT).map(Seating::seatHeld))
                .or(this::chairBehind);
    }

    Optional<Contacts> sitting() {
        return holds.contacts()
                .filter(c -> c.ground() == Ground.SEAT_BACK || c.ground() == Ground.SEAT_EDGE)
                .findFirst();
    }

    private Chair seat(Contacts sitting) {
        double back = sitting.ground() == Ground.SEAT_BACK ? -BACK_REST : -BACK_REST - FORWARD;
        double cushion = things.contains(Thing.CUSHION_ON_SEAT) ? Soft.CUSHION : 0;
        return new Chair(
                new Vec(back, 0, 0),
                sitting.seatHeight() - cushion,
                holds.at(Hand.Hold.ARMREST).isPresent(),
                Chair.WITH_THE_PERSON);
    }

    private static Chair chairHeld(Vec hand) {
        double z = Math.abs(hand.z()) > 0.14 ? hand.z() : 0;
        return new Chair(new Vec(hand.x() + .01, 0, z), Furniture.SEAT, false, Chair.WITH_THE_PERSON);
    }

    private static Chair seatHeld(Vec hand) {
        return new Chair(new Vec(hand.x() + .20, 0, 0), Furniture.SEAT, false, Chair.TOWARDS_THE_PERSON);
    }

    private Optional<Chair> chairBehind() {
        double heel = keys.stream().mapToDouble(Seating::hindmost).min().orElse(0);
        Vec back = new Vec(heel - CHAIR_BEHIND - Furniture.SEAT_DEPTH / 2, 0, 0);
        return things.contains(Thing.CHAIR_BEHIND)
                ? Optional.of(new Chair(back, Furniture.SEAT, false, Chair.WITH_THE_PERSON))
                : Optional.empty();
    }

    private static double hindmost(Posed posed) {
        return Math.min(posed.rightLeg().heel().x(), posed.leftLeg().heel().x());
    }
}
