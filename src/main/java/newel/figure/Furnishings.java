package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Contacts;
import newel.body.Foot;
import newel.body.Furniture;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** What stands in the room: chair, counter, wall, bed, step, in the same projection as the person. */
final class Furnishings {
    private static final int FORWARDS = 1;
    private static final int TOWARDS_US = -1;
    private static final double LEG = 0.014;
    private static final double SLAB = 0.022;
    /** Back rest behind the hip centres of someone sitting back; someone at the edge sits this much further forward. */
    private static final double BACK_REST = 0.095;

    private static final double FORWARD = 0.10;
    private static final double WALL_BEHIND = 0.10;
    /** A hand on a wall this far out stands at a door post. */
    private static final double BESIDE = 0.2;

    private static final double FIRST = -1e6;

    private final Camera camera;
    private final Posed posed;

    Furnishings(Camera camera, Posed posed) {
        this.camera = camera;
        this.posed = posed;
    }

    /** @param wallBehind the person leans on a wall behind, which no hand shows */
    List<Piece> pieces(boolean wallBehind) {
        List<Piece> pieces = new ArrayList<>();
        Contacts contacts = posed.contacts();
        if (contacts.ground() == Ground.BED) {
            pieces.add(bed());
        }
        held(pieces);
        steps(pieces);
        if (wallBehind) {
            double back =
                    Math.min(posed.rightLeg().heel().x(), posed.trunk().pelvis().x() - WALL_BEHIND);
            pieces.add(wall(back - 0.02, back));
        }
        return pieces;
    }

    /** The chair that a movement sits on, drawn in each of its frames. */
    List<Piece> seat(Contacts sitting, boolean armrests) {
        boolean edge = sitting.ground() != Ground.SEAT_BACK;
        return chair(new Vec(edge ? -BACK_REST - FORWARD : -BACK_REST, 0, 0), sitting.seatHeight(), armrests, FORWARDS);
    }

    private void held(List<Piece> pieces) {
        Vec back = holds(Hand.Hold.CHAIR_BACK);
        if (back != null) {
            pieces.addAll(chair(
                    new Vec(back.x(), 0, Math.abs(back.z()) > 0.14 ? back.z() : 0), Furniture.SEAT, false, FORWARDS));
        }
        Vec seat = holds(Hand.Hold.SEAT);
        if (seat != null && posed.contacts().ground() == Ground.FEET) {
            pieces.addAll(chair(new Vec(seat.x() + .20, 0, 0), Furniture.SEAT, false, TOWARDS_US));
        }
        Vec counter = holds(Hand.Hold.COUNTER);
        if (counter == null) {
            counter = holds(Hand.Hold.RAIL);
        }
        if (counter != null) {
            pieces.addAll(counter(counter));
        }
        Vec wall = holds(Hand.Hold.WALL);
        if (wall == null) {
            wall = holds(Hand.Hold.FIST);
        }
        if (wall != null) {
            pieces.add(Math.abs(wall.z()) > BESIDE ? doorPost(wall) : wall(wall.x(), wall.x() + 0.02));
        }
    }

    /** Where a hand meets this thing, or null. */
    private Vec holds(Hand.Hold hold) {
        for (Side side : Side.values()) {
            if (posed.contacts().hand(side).hold() == hold) {
                return posed.contacts().hand(side).at();
            }
        }
        return null;
    }

    /** A chair, its back rest's front at a point on the floor; it faces forward, or back towards the person. */
    private List<Piece> chair(Vec back, double seat, boolean armrests, int facing) {
        double half = Furniture.SEAT_HALF_WIDTH;
        double x = back.x();
        double front = x + facing * Furniture.SEAT_DEPTH;
        List<Piece> pieces = new ArrayList<>();
        for (double z : new double[] {back.z() - half, back.z() + half}) {
            pieces.add(box(
                    "chair leg", Tone.WOOD_DARK, front - facing * 2 * LEG, front, 0, seat - SLAB, z - LEG, z + LEG));
            pieces.add(box(
                    "chair post", Tone.WOOD_DARK, x - facing * 2 * LEG, x, 0, Furniture.CHAIR_BACK, z - LEG, z + LEG));
            if (armrests) {
                double arm = Furniture.ARMREST;
                pieces.add(box("armrest", Tone.WOOD_DARK, x, front - .02, arm - .02, arm, z - LEG, z + LEG));
                pieces.add(box(
                        "armrest post", Tone.WOOD_DARK, front - .05, front - .03, seat, arm - .02, z - LEG, z + LEG));
            }
        }
        double z0 = back.z() - half;
        double z1 = back.z() + half;
        double top = Furniture.CHAIR_BACK;
        pieces.add(box("seat", Tone.WOOD, x - facing * LEG, front, seat - SLAB, seat, z0 - LEG, z1 + LEG));
        pieces.add(box("back rest", Tone.WOOD, x - facing * 1.6 * LEG, x - facing * .3 * LEG, top - .12, top, z0, z1));
        return pieces;
    }

    /** In front, or beside when the hand is well out to the side. */
    private List<Piece> counter(Vec hand) {
        boolean beside = Math.abs(hand.z()) > 0.15 && hand.x() < 0.2;
        int side = hand.z() < 0 ? -1 : 1;
        double x0 = beside ? -0.35 : hand.x() - 0.03;
        double x1 = beside ? 0.5 : hand.x() + 0.30;
        double z0 = beside ? Math.min(hand.z() - side * .03, hand.z() + side * .3) : -0.34;
        double z1 = beside ? Math.max(hand.z() - side * .03, hand.z() + side * .3) : 0.34;
        double top = Furniture.COUNTER;
        double in = 0.02;
        return List.of(
                box("counter", Tone.COUNTER, x0 + in, x1, 0, top - .025, z0 + in, z1 - in),
                box("counter top", Tone.COUNTER_TOP, x0, x1, top - .025, top, z0, z1));
    }

    /** Drawn first, so that a wall nearer than the person does not hide them. */
    private Piece wall(double from, double to) {
        return new Piece("wall", FIRST, List.of(outline(Tone.WALL, from, to, 0, 1.12, -0.3, 0.3)));
    }

    private Piece doorPost(Vec hand) {
        int side = hand.z() < 0 ? -1 : 1;
        double near = hand.z() - side * .02;
        double far = hand.z() + side * .10;
        return new Piece(
                "door post",
                FIRST,
                List.of(outline(
                        Tone.WALL, hand.x(), hand.x() + .05, 0, 1.12, Math.min(near, far), Math.max(near, far))));
    }

    private Piece bed() {
        return new Piece(
                "bed",
                FIRST,
                List.of(
                        outline(Tone.BED, -0.62, 0.62, 0.02, Furniture.BED, -0.2, 0.2),
                        outline(Tone.PILLOW, -0.56, -0.30, Furniture.BED, Furniture.BED + .035, -0.13, 0.13)));
    }

    private void steps(List<Piece> pieces) {
        if (posed.contacts().ground() != Ground.FEET) {
            return;
        }
        for (Side side : Side.values()) {
            Foot foot = posed.contacts().foot(side);
            if (foot.placed() && foot.height() > 0.02) {
                pieces.add(box("step", Tone.STEP, foot.x() - .06, foot.x() + .16, 0, foot.height(), -.18, .18));
            }
        }
    }

    private Piece box(String name, Tone tone, double x0, double x1, double y0, double y1, double z0, double z1) {
        Vec middle = new Vec((x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2);
        return Piece.of(name, camera.see(middle).depth(), outline(tone, x0, x1, y0, y1, z0, z1));
    }

    private Mark outline(Tone tone, double x0, double x1, double y0, double y1, double z0, double z1) {
        List<Vec> corners = new ArrayList<>();
        for (double x : new double[] {x0, x1}) {
            for (double y : new double[] {y0, y1}) {
                for (double z : new double[] {z0, z1}) {
                    corners.add(new Vec(x, y, z));
                }
            }
        }
        return new Mark.Outline(tone, Solid.corners(camera, corners), true);
    }
}
