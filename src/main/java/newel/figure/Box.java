package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Vec;

/** A block that stands square in the room, in statures. */
record Box(double x0, double x1, double y0, double y1, double z0, double z1) {
    Mark outline(Camera camera, Tone tone) {
        return new Mark.Outline(tone, Solid.corners(camera, corners()), true);
    }

    Piece piece(Camera camera, Tone tone) {
        return Piece.thing(camera.see(middle()).depth(), outline(camera, tone));
    }

    Vec middle() {
        return new Vec((x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2);
    }

    private List<Vec> corners() {
        List<Vec> corners = new ArrayList<>();
        for (double x : new double[] {x0, x1}) {
            for (double y : new double[] {y0, y1}) {
                for (double z : new double[] {z0, z1}) {
                    corners.add(new Vec(x, y, z));
                }
            }
        }
        return corners;
    }
}
