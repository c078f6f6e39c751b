package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import newel.body.Foot;
import newel.body.Furniture;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** What stands in the room. It stands still: settled once from all key poses and drawn in each of their frames. */
final class Room {
    private static final double WALL_BEHIND = 0.085;
    /** A hand on a wall this far out has the wall beside it. */
    private static final double BESIDE = 0.2;

    private final Brush brush;
    private final Set<Thing> things;
    private final List<Posed> keys;
    private final Holds holds;
    private final Seating seating;

    Room(Camera camera, Set<Thing> things, List<Posed> keys) {
        this.brush = new Brush(camera);
        this.things = things;
        this.keys = keys;
        this.holds = new Holds(keys);
        this.seating = new Seating(things, keys);
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        if (holds.contacts().anyMatch(c -> c.ground() == Ground.BED)) {
            bed(pieces);
        }
        seating.chair().ifPresent(chair -> chair(pieces, chair));
        counters(pieces);
        walls(pieces);
        pieces.addAll(footing());
        pieces.addAll(new Obstacles(brush, things, keys).pieces());
        pieces.addAll(new Cushions(brush, things, keys).pieces());
        return pieces;
    }

    private void bed(List<Piece> pieces) {
        pieces.add(Bed.piece(brush, things.contains(Thing.PILLOWS_AT_BACK)));
        if (things.contains(Thing.STOOL_BESIDE_BED)) {
            pieces.addAll(Steps.stool(brush, new Vec(.25, .12, .30), .09, .09));
        }
    }

    private void chair(List<Piece> pieces, Chair chair) {
        pieces.addAll(chair.pieces(brush));
        if (things.contains(Thing.CHAIR_AT_WALL)) {
            boolean sits = seating.sitting().isPresent();
            boolean held = holds.at(Hand.Hold.CHAIR_BACK).isPresent() && !sits;
            Wall wall = held
                    ? Wall.across(chair.front() + .01, 1, Wall.BEHIND_STANDING)
                    : Wall.across(chair.wall(), -chair.facing(), sits ? Wall.BEHIND_SITTING : Wall.BEHIND_STANDING);
            pieces.add(wall.piece(brush));
        }
        if (things.contains(Thing.CUSHION_ON_SEAT)) {
            pieces.add(Soft.cushionOnSeat(brush, chair));
        }
        if (things.contains(Thing.CUSHION_AT_BACK)) {
            pieces.add(Soft.cushionAtBack(brush, chair, keys.getFirst()));
        }
    }

    private void counters(List<Piece> pieces) {
        holds.at(Hand.Hold.COUNTER)
                .ifPresent(hand -> pieces.addAll(
                        Counter.at(hand, things.contains(Thing.SINK)).pieces(brush)));
        if (things.contains(Thing.COUNTER_BEHIND)) {
            pieces.addAll(Counter.behind(rearmost()).pieces(brush));
        }
        if (things.contains(Thing.COUNTER_NEAR)) {
            pieces.addAll(Counter.near().pieces(brush));
        }
        for (Side side : Side.values()) {
            holds.at(Hand.Hold.RAIL, side).ifPresent(hand -> pieces.add(Steps.rail(brush, hand, slope())));
        }
    }

    /** A rail rises as the flight does. */
    private double slope() {
        return things.contains(Thing.STAIRS) ? Furniture.STEP / .17 : 0;
    }

    private void walls(List<Piece> pieces) {
        Optional<Vec> hand = holds.at(Hand.Hold.WALL).or(() -> holds.at(Hand.Hold.FIST));
        hand.ifPresent(at -> pieces.addAll(wall(at)));
        if (hand.isEmpty() && things.contains(Thing.WALL_BEHIND)) {
            pieces.add(Wall.across(rearmost(), -1, Wall.BEHIND_STANDING).piece(brush));
        }
    }

    /** Where the seat of someone who stands comes furthest back. */
    private double rearmost() {
        return keys.stream()
                .mapToDouble(posed -> posed.trunk().pelvis().x() - WALL_BEHIND)
                .min()
                .orElse(0);
    }

    private List<Piece> wall(Vec hand) {
        if (Math.abs(hand.z()) <= BESIDE) {
            double high = seating.sitting().isPresent() ? Wall.BEHIND_SITTING : Wall.BEHIND_STANDING;
            return List.of(Wall.across(hand.x() + .012, 1, high).piece(brush));
        }
        return things.contains(Thing.DOORWAY)
                ? Wall.doorFrame(brush, hand.x(), hand.z())
                : List.of(Wall.along(hand.z() + Math.signum(hand.z()) * .01, -.42, .32)
                        .piece(brush));
    }

    private List<Piece> footing() {
        List<Foot> raised = holds.contacts()
                .filter(c -> c.ground() != Ground.BED)
                .flatMap(c -> Stream.of(c.rightFoot(), c.leftFoot()))
                .filter(Steps::raised)
                .toList();
        return raised.isEmpty() ? List.of() : Steps.under(brush, raised.getFirst(), things.contains(Thing.STAIRS));
    }
}
