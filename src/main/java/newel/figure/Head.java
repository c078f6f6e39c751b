package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.TrunkAt;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/**
 * Head, ears and what is on them. Breadth .09 H, depth .115 H, height .13 H (ANSUR II means). The first mark is the
 * largest outline.
 */
final class Head {
    private final Brush brush;
    private final Skull skull;
    private final Look look;

    Head(Brush brush, TrunkAt trunk, Look look) {
        this.brush = brush;
        this.skull = new Skull(brush, trunk);
        this.look = look;
    }

    Piece piece() {
        List<Mark> marks = new ArrayList<>();
        HairShape hair = new HairShape(brush, skull, look.hair().cut());
        marks.addAll(hair.behind());
        new Face(brush, skull, look).draw(marks);
        marks.addAll(hair.over());
        ears(marks);
        if (look.glasses()) {
            marks.addAll(new Glasses(brush, skull).marks());
        }
        return new Piece(Piece.What.HEAD, brush.depth(skull.centre()) + 0.02 * Camera.SCALE, marks);
    }

    private void ears(List<Mark> marks) {
        for (int side : new int[] {-1, 1}) {
            Vec out = new Vec(-.05, -.08, side).unit();
            if (look.hair().cut() != Hair.Cut.BOB && skull.facing(out) > -0.08) {
                Ellipsoid ear = new Ellipsoid(skull.surface(out), skull.turn(), .0105, .017, .006);
                marks.add(brush.patch(Tone.SKIN, ear));
                if (skull.facing(out) > 0.3) {
                    marks.add(brush.line(
                            Tone.CREASE,
                            1,
                            skull.surface(new Vec(.05, .05, side).unit()),
                            skull.surface(new Vec(-.12, .02, side).unit()),
                            skull.surface(new Vec(-.10, -.20, side).unit())));
                }
            }
        }
    }
}
