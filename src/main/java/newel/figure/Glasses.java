package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Vec;

/** Glasses: a ring round each eye that is seen, a bridge, and an arm to each ear. */
record Glasses(Brush brush, Skull skull) {
    private static final double WIDTH = 1.1;
    private static final double CLEAR = 1.04;

    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            if (skull.facing(new Vec(.88, .18, side * .40).unit()) > .1) {
                marks.add(brush.line(Tone.FACE, WIDTH, ring(side)));
            }
            if (skull.facing(new Vec(.3, .15, side).unit()) > .1) {
                marks.add(brush.line(
                        Tone.FACE, WIDTH, at(.74, .2, side * .66), at(.4, .16, side * .92), at(.05, .12, side)));
            }
        }
        if (skull.facing(new Vec(1, .2, 0).unit()) > .2) {
            marks.add(brush.line(Tone.FACE, WIDTH, at(.96, .24, -.16), at(.97, .27, 0), at(.96, .24, .16)));
        }
        return marks;
    }

    private List<Vec> ring(int side) {
        List<Vec> ring = new ArrayList<>();
        for (int i = 0; i <= 12; i++) {
            double angle = 2 * Math.PI * i / 12;
            ring.add(at(.88, .16 + .20 * Math.sin(angle), side * (.42 + .25 * Math.cos(angle))));
        }
        return ring;
    }

    private Vec at(double ahead, double up, double right) {
        Vec surface = skull.surface(new Vec(ahead, up, right).unit());
        return skull.centre().plus(surface.minus(skull.centre()).times(CLEAR));
    }
}
