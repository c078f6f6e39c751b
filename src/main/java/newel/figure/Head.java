package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.TrunkAt;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/**
 * Head and face. Breadth .09 H, depth .115 H, height .13 H (ANSUR II means). The face is the part of the skull in front of
 * a slanting plane; hair is the rest, so that front, side and back tell themselves apart.
 */
final class Head {
    /** The face's edge: directions whose part along this is larger than the level below belong to the face. */
    private static final Vec FACE = new Vec(0.88, -0.47, 0).unit();

    private static final double FACE_FROM = 0.12;
    private static final double SEEN = 0.12;

    private final Camera camera;
    private final TrunkAt trunk;
    private final Ellipsoid skull;

    Head(Camera camera, TrunkAt trunk) {
        this.camera = camera;
        this.trunk = trunk;
        this.skull = new Ellipsoid(trunk.head(), trunk.headTurn(), .0565, .066, .0455);
    }

    Piece piece() {
        List<Mark> marks = new ArrayList<>();
        Ellipsoid hair = new Ellipsoid(
                skull.centre().plus(trunk.headTurn().of(new Vec(-.004, .004, 0))),
                trunk.headTurn(),
                .0595,
                .068,
                .0495);
        marks.add(new Mark.Outline(Tone.HAIR, Solid.edge(camera, hair), true));
        face(marks);
        ears(marks);
        return new Piece(Piece.What.HEAD, camera.see(skull.centre()).depth() + 0.02 * Camera.SCALE, marks);
    }

    private void face(List<Mark> marks) {
        List<Spot> skin = new ArrayList<>();
        for (Vec direction : directions()) {
            if (direction.dot(FACE) > FACE_FROM && facing(direction) > -0.02) {
                skin.add(camera.see(skull.surface(direction)));
            }
        }
        if (skin.size() > 6) {
            marks.add(new Mark.Outline(Tone.SKIN, Solid.hull(skin), false));
            nose(marks);
            features(marks);
        }
    }

    private void nose(List<Mark> marks) {
        if (facing(new Vec(1, 0, 0)) > -0.3) {
            Vec tip = trunk.nose().plus(trunk.headTurn().of(new Vec(-.004, -.004, 0)));
            Vec bridge = skull.surface(new Vec(.99, .18, 0).unit());
            marks.add(new Mark.Outline(
                    Tone.SKIN,
                    Solid.hull(camera, List.of(Ellipsoid.ball(tip, .0085), Ellipsoid.ball(bridge, .005))),
                    false));
            if (facing(new Vec(1, 0, 0)) > 0.5) {
                double aside = camera.right().dot(trunk.headTurn().z()) >= 0 ? .008 : -.008;
                Vec wing = tip.plus(trunk.headTurn().of(new Vec(-.002, -.006, aside)));
                marks.add(new Mark.Line(
                        Tone.FACE,
                        List.of(
                                camera.see(bridge.towards(tip, .6)),
                                camera.see(wing),
                                camera.see(tip.plus(trunk.headTurn().of(new Vec(0, -.009, 0))))),
                        1.1));
            }
        }
    }

    private void features(List<Mark> marks) {
        for (int side : new int[] {-1, 1}) {
            Vec eye = new Vec(.88, .2, side * .40).unit();
            if (facing(eye) > SEEN) {
                Ellipsoid dot = new Ellipsoid(skull.surface(eye), trunk.headTurn(), .004, .0068, .0058);
                marks.add(new Mark.Outline(Tone.FACE, Solid.edge(camera, dot), false));
                marks.add(line(new Vec(.80, .44, side * .52), new Vec(.88, .46, side * .22), 1.3));
            }
        }
        Vec mouth = new Vec(.87, -.48, 0).unit();
        if (facing(mouth) > SEEN) {
            List<Spot> smile = new ArrayList<>();
            for (double z = -.26; z <= .27; z += .13) {
                Vec lip = new Vec(.86, -.52 + z * z, z).unit();
                if (facing(lip) > 0) {
                    smile.add(camera.see(skull.surface(lip)));
                }
            }
            if (smile.size() > 1) {
                marks.add(new Mark.Line(Tone.FACE, smile, 1.5));
            }
        }
    }

    private Mark line(Vec from, Vec to, double width) {
        return new Mark.Line(
                Tone.FACE,
                List.of(camera.see(skull.surface(from.unit())), camera.see(skull.surface(to.unit()))),
                width);
    }

    private void ears(List<Mark> marks) {
        for (int side : new int[] {-1, 1}) {
            Vec out = new Vec(-.05, -.05, side).unit();
            if (facing(out) > SEEN - 0.2) {
                Ellipsoid ear = new Ellipsoid(skull.surface(out), trunk.headTurn(), .010, .0155, .005);
                marks.add(new Mark.Outline(Tone.SKIN, Solid.edge(camera, ear), false));
            }
        }
    }

    /** How much a place of the skull turns towards the viewer, −1 to 1. */
    private double facing(Vec direction) {
        Vec normal = new Vec(direction.x() / skull.x(), direction.y() / skull.y(), direction.z() / skull.z()).unit();
        return trunk.headTurn().of(normal).dot(camera.viewer());
    }

    private static List<Vec> directions() {
        List<Vec> directions = new ArrayList<>();
        for (int latitude = -85; latitude <= 85; latitude += 8) {
            for (int longitude = 0; longitude < 360; longitude += 8) {
                double lat = Math.toRadians(latitude);
                double lon = Math.toRadians(longitude);
                directions.add(new Vec(Math.cos(lat) * Math.cos(lon), Math.sin(lat), Math.cos(lat) * Math.sin(lon)));
            }
        }
        return directions;
    }
}
