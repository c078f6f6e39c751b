package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Furniture;
import newel.body.Rot;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** The bed that someone lies on, its head end where the head is, drawn first. */
final class Bed {
    private static final double HALF_LENGTH = 0.62;
    private static final double HALF_WIDTH = 0.2;
    private static final double MATTRESS = 0.10;
    private static final double RAIL = 0.07;
    private static final double PILLOW = 0.017;

    static Piece piece(Brush brush, boolean propped) {
        List<Mark> marks = new ArrayList<>();
        legs(brush, marks);
        double under = Furniture.BED - MATTRESS;
        Box head = Box.between(-HALF_LENGTH - .03, -HALF_LENGTH, 0, Furniture.BED + .17, -HALF_WIDTH, HALF_WIDTH);
        marks.add(head.outline(brush, Tone.WOOD_DARK));
        Box rail = Box.between(-HALF_LENGTH, HALF_LENGTH, under - RAIL, under, -HALF_WIDTH, HALF_WIDTH);
        marks.add(rail.outline(brush, Tone.WOOD_EDGE));
        Box mattress = Box.between(-HALF_LENGTH, HALF_LENGTH, under, Furniture.BED, -HALF_WIDTH, HALF_WIDTH);
        marks.add(mattress.outline(brush, Tone.BED_EDGE));
        marks.add(mattress.top(brush, Tone.BED));
        pillows(brush, marks, propped);
        return new Piece(Piece.What.THING, Piece.FIRST, marks);
    }

    private static void legs(Brush brush, List<Mark> marks) {
        for (double x : new double[] {-HALF_LENGTH + .04, HALF_LENGTH - .04}) {
            for (double z : new double[] {-HALF_WIDTH + .02, HALF_WIDTH - .02}) {
                marks.add(Box.between(x - .02, x + .02, 0, Furniture.BED - MATTRESS - RAIL, z - .02, z + .02)
                        .outline(brush, Tone.WOOD_DARK));
            }
        }
    }

    private static void pillows(Brush brush, List<Mark> marks, boolean propped) {
        if (propped) {
            marks.add(pillow(brush, -.215, Furniture.BED + .115, 68, .036));
            marks.add(pillow(brush, -.165, Furniture.BED + .085, 62, .034));
        } else {
            marks.add(pillow(brush, -.43, Furniture.BED + PILLOW, 0, PILLOW));
        }
    }

    private static Mark pillow(Brush brush, double x, double y, double tilt, double half) {
        Rot turn = Rot.aboutZ(-tilt);
        Vec middle = new Vec(x, y, 0);
        Ellipsoid[] corners = new Ellipsoid[4];
        for (int i = 0; i < corners.length; i++) {
            Vec corner = new Vec(i % 2 == 0 ? -.085 : .085, 0, i < 2 ? -.115 : .115);
            corners[i] = new Ellipsoid(middle.plus(turn.of(corner)), turn, .03, half, .03);
        }
        return brush.limb(Tone.PILLOW, corners);
    }

    private Bed() {}
}
