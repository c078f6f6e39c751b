package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.body.Contacts;
import newel.body.Foot;
import newel.body.Furniture;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** What stands in the room, in the same projection as the person. */
final class Room {
    /** Back rest behind the hip centres of someone sitting back; someone at the edge sits this much further forward. */
    private static final double BACK_REST = 0.095;

    private static final double FORWARD = 0.10;
    private static final double WALL_BEHIND = 0.10;
    /** A hand on a wall this far out stands at a door post. */
    private static final double BESIDE = 0.2;

    private final Camera camera;
    private final boolean wallBehind;
    private final List<Contacts> all;

    /** @param wallBehind the person leans on a wall behind, which no hand shows */
    Room(Camera camera, boolean wallBehind, List<KeyPose> keyPoses) {
        this.camera = camera;
        this.wallBehind = wallBehind;
        this.all = keyPoses.stream().map(KeyPose::contacts).toList();
    }

    List<Piece> pieces(Posed posed) {
        List<Piece> pieces = new ArrayList<>();
        Contacts contacts = posed.contacts();
        if (contacts.ground() == Ground.BED) {
            pieces.add(Bed.piece(camera));
        }
        held(pieces, contacts);
        steps(pieces, contacts);
        if (wallBehind) {
            double back =
                    Math.min(posed.rightLeg().heel().x(), posed.trunk().pelvis().x() - WALL_BEHIND);
            pieces.add(Wall.across(camera, back - 0.02));
        }
        seat().ifPresent(chair -> pieces.addAll(chair.pieces(camera)));
        return pieces;
    }

    /** The chair that a movement sits on stands in each of its frames. */
    private Optional<Chair> seat() {
        return all.stream()
                .filter(c -> c.ground() == Ground.SEAT_BACK || c.ground() == Ground.SEAT_EDGE)
                .findFirst()
                .map(this::seat);
    }

    private Chair seat(Contacts sitting) {
        double back = sitting.ground() == Ground.SEAT_BACK ? -BACK_REST : -BACK_REST - FORWARD;
        boolean armrests = all.stream().anyMatch(c -> at(c, Hand.Hold.ARMREST).isPresent());
        return new Chair(new Vec(back, 0, 0), sitting.seatHeight(), armrests, Chair.WITH_THE_PERSON);
    }

    private void held(List<Piece> pieces, Contacts contacts) {
        at(contacts, Hand.Hold.CHAIR_BACK)
                .ifPresent(hand -> pieces.addAll(chairHeld(hand).pieces(camera)));
        if (contacts.ground() == Ground.FEET) {
            at(contacts, Hand.Hold.SEAT)
                    .ifPresent(hand -> pieces.addAll(seatHeld(hand).pieces(camera)));
        }
        at(contacts, Hand.Hold.COUNTER)
                .or(() -> at(contacts, Hand.Hold.RAIL))
                .ifPresent(hand -> pieces.addAll(Counter.pieces(camera, hand)));
        at(contacts, Hand.Hold.WALL).or(() -> at(contacts, Hand.Hold.FIST)).ifPresent(hand -> pieces.add(wall(hand)));
    }

    private static Chair chairHeld(Vec hand) {
        double z = Math.abs(hand.z()) > 0.14 ? hand.z() : 0;
        return new Chair(new Vec(hand.x(), 0, z), Furniture.SEAT, false, Chair.WITH_THE_PERSON);
    }

    private static Chair seatHeld(Vec hand) {
        return new Chair(new Vec(hand.x() + .20, 0, 0), Furniture.SEAT, false, Chair.TOWARDS_THE_PERSON);
    }

    private Piece wall(Vec hand) {
        return Math.abs(hand.z()) > BESIDE ? Wall.doorPost(camera, hand) : Wall.across(camera, hand.x());
    }

    /** Where a hand meets this thing. */
    private static Optional<Vec> at(Contacts contacts, Hand.Hold hold) {
        return List.of(Side.values()).stream()
                .map(contacts::hand)
                .filter(hand -> hand.hold() == hold)
                .map(Hand::at)
                .findFirst();
    }

    private void steps(List<Piece> pieces, Contacts contacts) {
        for (Side side : Side.values()) {
            Foot foot = contacts.foot(side);
            if (contacts.ground() == Ground.FEET && foot.placed() && foot.height() > 0.02) {
                pieces.add(
                        new Box(foot.x() - .06, foot.x() + .16, 0, foot.height(), -.18, .18).piece(camera, Tone.STEP));
            }
        }
    }
}
