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
    private static final double LEG = 0.014;
    private static final double SLAB = 0.022;
    /** Back rest behind the hip centres of someone sitting back; someone at the edge sits this much further forward. */
    private static final double BACK_REST = 0.095;

    private static final double FORWARD = 0.10;
    private static final double WALL_BEHIND = 0.10;

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
        if (contacts.seatHeight() > 0 && contacts.ground() != Ground.BED) {
            boolean edge = contacts.ground() != Ground.SEAT_BACK;
            pieces.addAll(
                    chair(new Vec(edge ? -BACK_REST - FORWARD : -BACK_REST, 0, 0), contacts.seatHeight(), armrests()));
        }
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

    private boolean armrests() {
        return holds(Hand.Hold.ARMREST) != null;
    }

    private void held(List<Piece> pieces) {
        Vec back = holds(Hand.Hold.CHAIR_BACK);
        if (back != null) {
            pieces.addAll(chair(new Vec(back.x(), 0, Math.abs(back.z()) > 0.14 ? back.z() : 0), Furniture.SEAT, false));
        }
        Vec counter = holds(Hand.Hold.COUNTER);
        if (counter == null) {
            counter = holds(Hand.Hold.RAIL);
        }
        if (counter != null) {
            pieces.addAll(counter(counter));
        }
        Vec wall = holds(Hand.Hold.WALL);
        if (wall != null) {
            pieces.add(wall(wall.x(), wall.x() + 0.02));
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

    /** A chair that faces forward, its back rest's front at a point on the floor. */
    private List<Piece> chair(Vec back, double seat, boolean armrests) {
        double half = Furniture.SEAT_HALF_WIDTH;
        double front = back.x() + Furniture.SEAT_DEPTH;
        List<Piece> pieces = new ArrayList<>();
        for (double z : new double[] {back.z() - half, back.z() + half}) {
            pieces.add(box("chair leg", Tone.WOOD_DARK, front - 2 * LEG, front, 0, seat - SLAB, z - LEG, z + LEG));
            pieces.add(box(
                    "chair post",
                    Tone.WOOD_DARK,
                    back.x() - 2 * LEG,
                    back.x(),
                    0,
                    Furniture.CHAIR_BACK,
                    z - LEG,
                    z + LEG));
            if (armrests) {
                pieces.add(box(
                        "armrest",
                        Tone.WOOD_DARK,
                        back.x(),
                        front - .02,
                        Furniture.ARMREST - .02,
                        Furniture.ARMREST,
                        z - LEG,
                        z + LEG));
                pieces.add(box(
                        "armrest post",
                        Tone.WOOD_DARK,
                        front - .05,
                        front - .03,
                        seat,
                        Furniture.ARMREST - .02,
                        z - LEG,
                        z + LEG));
            }
        }
        pieces.add(box(
                "seat",
                Tone.WOOD,
                back.x() - LEG,
                front,
                seat - SLAB,
                seat,
                back.z() - half - LEG,
                back.z() + half + LEG));
        double top = Furniture.CHAIR_BACK;
        pieces.add(box(
                "back rest",
                Tone.WOOD,
                back.x() - 1.6 * LEG,
                back.x() - .3 * LEG,
                top - .12,
                top,
                back.z() - half,
                back.z() + half));
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

    private Piece wall(double from, double to) {
        return box("wall", Tone.WALL, from, to, 0, 1.12, -0.34, 0.34);
    }

    private Piece bed() {
        return new Piece(
                "bed",
                -1e6,
                List.of(
                        outline(Tone.BED, -0.62, 0.62, 0.1, Furniture.BED, -0.2, 0.2),
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
