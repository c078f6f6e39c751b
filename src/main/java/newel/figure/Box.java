package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Vec;

/** A block that stands square in the room, in statures. */
record Box(double x0, double x1, double y0, double y1, double z0, double z1) {
    /** Between two corners in any order. */
    static Box between(double xa, double xb, double ya, double yb, double za, double zb) {
        return new Box(
                Math.min(xa, xb),
                Math.max(xa, xb),
                Math.min(ya, yb),
                Math.max(ya, yb),
                Math.min(za, zb),
                Math.max(za, zb));
    }

    Mark outline(Brush brush, Tone tone) {
        return new Mark.Outline(tone, Solid.corners(brush.camera(), corners(y0)), true);
    }

    Piece piece(Brush brush, Tone tone) {
        return Piece.thing(brush.depth(middle()), outline(brush, tone));
    }

    /** With an upper face of its own tone, so that it reads as a block. */
    Piece piece(Brush brush, Tone tone, Tone top) {
        return Piece.thing(brush.depth(middle()), outline(brush, tone), top(brush, top));
    }

    Mark top(Brush brush, Tone tone) {
        return new Mark.Outline(tone, Solid.corners(brush.camera(), corners(y1)), false);
    }

    Vec middle() {
        return new Vec((x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2);
    }

    private List<Vec> corners(double lowest) {
        List<Vec> corners = new ArrayList<>();
        for (double x : new double[] {x0, x1}) {
            for (double y : new double[] {lowest, y1}) {
                for (double z : new double[] {z0, z1}) {
                    corners.add(new Vec(x, y, z));
                }
            }
        }
        return corners;
    }
}
