package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/** The face: the part of the skull ahead of a slanting plane, so that front, side and back tell themselves apart. */
record Face(Brush brush, Skull skull, Look look) {
    /** The face's edge: directions whose part along this is larger than the level below belong to the face. */
    private static final Vec AHEAD = new Vec(0.88, -0.47, 0).unit();

    private static final double FROM = 0.12;
    private static final double SEEN = 0.12;
    private static final int[] SIDES = {-1, 1};

    void draw(List<Mark> marks) {
        List<Spot> skin = skull.part(direction -> direction.dot(AHEAD) > FROM, 1);
        if (skin.isEmpty()) {
            return;
        }
        marks.add(new Mark.Outline(Tone.SKIN, skin, false));
        nose(marks);
        for (int side : SIDES) {
            eye(marks, side);
            age(marks, side);
        }
        mouth(marks);
    }

    private void nose(List<Mark> marks) {
        double front = skull.facing(new Vec(1, 0, 0));
        if (front < -0.3) {
            return;
        }
        Vec tip = skull.nose().plus(own(-.004, -.004, 0));
        Vec bridge = skull.surface(new Vec(.99, .18, 0).unit());
        marks.add(brush.patch(Tone.SKIN, Ellipsoid.ball(tip, .0085), Ellipsoid.ball(bridge, .005)));
        if (front > 0.5) {
            double aside = brush.camera().right().dot(skull.turn().z()) >= 0 ? .008 : -.008;
            marks.add(brush.line(
                    Tone.CREASE,
                    1.4,
                    bridge.towards(tip, .6),
                    tip.plus(own(-.002, -.006, aside)),
                    tip.plus(own(0, -.009, 0))));
        }
    }

    private Vec own(double ahead, double up, double right) {
        return skull.turn().of(new Vec(ahead, up, right));
    }

    private void eye(List<Mark> marks, int side) {
        Vec eye = new Vec(.88, .2, side * .40).unit();
        if (skull.facing(eye) > SEEN) {
            marks.add(brush.patch(Tone.FACE, new Ellipsoid(skull.surface(eye), skull.turn(), .004, .0062, .0056)));
            line(
                    marks,
                    Tone.BROW,
                    1.6,
                    new Vec(.80, .43, side * .54),
                    new Vec(.86, .48, side * .36),
                    new Vec(.90, .45, side * .20));
        }
    }

    /** The lines of an older face: from the nose to the corner of the mouth, and beside the eye. */
    private void age(List<Mark> marks, int side) {
        line(
                marks,
                Tone.CREASE,
                1,
                new Vec(.92, -.18, side * .24),
                new Vec(.86, -.40, side * .38),
                new Vec(.80, -.54, side * .40));
        line(marks, Tone.CREASE, .9, new Vec(.72, .20, side * .64), new Vec(.62, .13, side * .74));
    }

    private void mouth(List<Mark> marks) {
        List<Vec> smile = new ArrayList<>();
        for (double z = -.26; z <= .27; z += .13) {
            Vec lip = new Vec(.86, -.52 + z * z, z).unit();
            if (skull.facing(lip) > 0) {
                smile.add(skull.surface(lip));
            }
        }
        if (skull.facing(new Vec(.87, -.48, 0).unit()) > SEEN && smile.size() > 1) {
            marks.add(brush.line(Tone.FACE, 1.5, smile));
        }
    }

    private void line(List<Mark> marks, Tone tone, double width, Vec... directions) {
        List<Vec> points = new ArrayList<>();
        for (Vec direction : directions) {
            if (skull.facing(direction.unit()) > SEEN) {
                points.add(skull.surface(direction.unit()));
            }
        }
        if (points.size() > 1) {
            marks.add(brush.line(tone, width, points));
        }
    }
}
