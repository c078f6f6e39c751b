package newel.figure;

import java.util.List;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** Draws round solids and lines as one camera sees them. */
record Brush(Camera camera) {
    /** Everything between the solids, with an edge in the colour of the sheet. */
    Mark limb(Tone tone, Ellipsoid... solids) {
        return limb(tone, List.of(solids));
    }

    Mark limb(Tone tone, List<Ellipsoid> solids) {
        return new Mark.Outline(tone, Solid.hull(camera, solids), true);
    }

    /** The same without an edge: something on a surface. */
    Mark patch(Tone tone, Ellipsoid... solids) {
        return new Mark.Outline(tone, Solid.hull(camera, List.of(solids)), false);
    }

    Mark line(Tone tone, double width, Vec... points) {
        return line(tone, width, List.of(points));
    }

    Mark line(Tone tone, double width, List<Vec> points) {
        return new Mark.Line(tone, points.stream().map(camera::see).toList(), width);
    }

    double depth(Vec at) {
        return camera.see(at).depth();
    }

    /** How much a direction points towards the viewer, −1 to 1. */
    double towards(Vec direction) {
        return direction.dot(camera.viewer());
    }
}
