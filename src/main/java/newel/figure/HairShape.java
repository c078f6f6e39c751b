package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Vec;

/** Hair: what lies behind the face, and what lies over the head's edge. The first mark is the whole head's outline. */
record HairShape(Brush brush, Skull skull, Hair.Cut cut) {
    List<Mark> behind() {
        return switch (cut) {
            case BALD -> List.of(brush.limb(Tone.SKIN, skull.solid()));
            case SHORT -> List.of(cap(.0595, .068, .0495));
            case BUN ->
                List.of(
                        cap(.0585, .0675, .0485),
                        brush.limb(Tone.HAIR, skull.at(-.058, .036, 0, .024, .024, .026)),
                        brush.line(
                                Tone.HAIR_LINE,
                                1,
                                skull.surface(new Vec(-.6, .8, 0)),
                                skull.surface(new Vec(-.9, .5, 0))));
            case BOB ->
                List.of(
                        cap(.0610, .069, .0510),
                        brush.limb(
                                Tone.HAIR,
                                skull.at(-.012, .000, 0, .052, .060, .053),
                                skull.at(-.030, -.052, 0, .030, .020, .040)),
                        curtain(-1),
                        curtain(1));
        };
    }

    private Mark cap(double x, double y, double z) {
        return brush.limb(Tone.HAIR, skull.at(-.004, .004, 0, x, y, z));
    }

    private Mark curtain(int side) {
        return brush.limb(
                Tone.HAIR,
                skull.at(-.006, .012, side * .036, .030, .030, .018),
                skull.at(-.002, -.048, side * .042, .020, .016, .011));
    }

    /** The ring that a bald head keeps: above and behind the ears, and at the back. */
    List<Mark> over() {
        List<Mark> marks = new ArrayList<>();
        if (cut == Hair.Cut.BALD) {
            if (skull.facing(new Vec(-1, 0, 0)) > -.1) {
                marks.add(brush.patch(Tone.HAIR, skull.at(-.047, -.006, 0, .014, .024, .036)));
            }
            for (int side : new int[] {-1, 1}) {
                if (skull.facing(new Vec(-.2, 0, side).unit()) > 0) {
                    marks.add(brush.patch(Tone.HAIR, skull.at(-.024, .002, side * .040, .029, .022, .009)));
                }
            }
        }
        return marks;
    }
}
