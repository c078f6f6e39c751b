package newel.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import newel.body.Fingers;
import newel.body.Vec;
import newel.figure.Solid.Ellipsoid;

/**
 * A free hand finger by finger. Points are (along the hand from the wrist, towards the thumb, out of the palm) in
 * statures. Lengths and bends are by eye within a hand of 0.108 statures (design choice).
 *
 * @param at brings a point of the hand into the room
 * @param size how much larger than life
 */
record FingerShape(Brush brush, Fingers fingers, Function<Vec, Vec> at, double size) {
    private static final double KNUCKLES = .052;
    /** Where each finger begins towards the thumb, and its length: first to small finger. */
    private static final double[] SIDE = {.0130, .0045, -.0045, -.0130};

    private static final double[] LENGTH = {.047, .052, .047, .037};
    /** How far each leans to its side when the hand is spread, degrees. */
    private static final double[] SPREAD = {13, 3, -7, -19};
    /** Bend of the three joints of a fist, degrees, and the parts of a finger's length. */
    private static final double[] BEND = {80, 98, 62};

    private static final double[] PART = {.44, .31, .25};
    /** A finger that meets the thumb is bent this much. */
    private static final double MEETING = .42;

    /** Straighter than this, a finger begins in the palm. */
    private static final double SMOOTH = .6;

    private static final Vec THUMB_BASE = new Vec(.014, .014, .004);
    private static final Vec THUMB_OUT = new Vec(.058, .046, .006);
    private static final Vec THUMB_OVER = new Vec(.060, .002, .033);

    List<Mark> marks(Tone skin) {
        return Stream.concat(Stream.of(palm(skin)), over(skin).stream().flatMap(piece -> piece.marks().stream()))
                .toList();
    }

    /** Fingers and thumb, from far to near. */
    List<Piece> over(Tone skin) {
        List<Piece> pieces = new ArrayList<>();
        for (int finger = 0; finger < SIDE.length; finger++) {
            pieces.add(chain(skin, finger(finger), .0074, curl(finger) < SMOOTH));
        }
        pieces.add(chain(skin, thumb(), .0082, fingers.curl() < SMOOTH));
        pieces.sort(Comparator.comparingDouble(Piece::depth));
        return pieces;
    }

    Mark palm(Tone skin) {
        return brush.limb(
                skin,
                ball(Vec.ZERO, .0165),
                ball(new Vec(.018, .012, 0), .0120),
                ball(new Vec(KNUCKLES, SIDE[0], 0), .0095),
                ball(new Vec(KNUCKLES - .004, SIDE[3], 0), .0090));
    }

    /** @param smooth goes over into the palm without an edge */
    private Piece chain(Tone skin, List<Vec> joints, double radius, boolean smooth) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 1; i < joints.size(); i++) {
            double thick = radius - .0004 * i;
            marks.add(brush.limb(skin, ball(joints.get(i - 1), thick + .0004), ball(joints.get(i), thick)));
        }
        if (smooth) {
            Vec into = joints.get(0).minus(joints.get(1).minus(joints.get(0)).times(.4));
            marks.add(brush.patch(skin, ball(into, radius), ball(joints.get(0), radius - .0004)));
        }
        return new Piece(Piece.What.THING, depth(joints), marks);
    }

    private double depth(List<Vec> joints) {
        return joints.stream()
                .mapToDouble(joint -> brush.depth(at.apply(joint)))
                .max()
                .orElseThrow();
    }

    List<Vec> finger(int i) {
        double curl = curl(i);
        double lean = Math.toRadians(SPREAD[i] * (1 - Math.min(1, curl * 1.6)));
        List<Vec> joints = new ArrayList<>(List.of(new Vec(i == 3 ? KNUCKLES - .005 : KNUCKLES, SIDE[i], 0)));
        double bend = 0;
        for (int part = 0; part < PART.length; part++) {
            bend += Math.toRadians(BEND[part] * curl);
            double length = LENGTH[i] * PART[part];
            double along = Math.cos(bend) * length;
            joints.add(joints.getLast()
                    .plus(new Vec(along * Math.cos(lean), along * Math.sin(lean), Math.sin(bend) * length)));
        }
        return joints;
    }

    private double curl(int finger) {
        double meets = meets(finger);
        return fingers.curl() * (1 - meets) + MEETING * meets;
    }

    /** How much this finger meets the thumb, 0 to 1. */
    private double meets(int finger) {
        return Math.max(0, 1 - Math.abs(fingers.thumbTo() - (finger + 1)));
    }

    List<Vec> thumb() {
        Vec rest = THUMB_OUT.towards(THUMB_OVER, fingers.curl());
        Vec tip = rest;
        double met = 0;
        for (int i = 0; i < SIDE.length; i++) {
            double share = meets(i);
            met += share;
            tip = tip.plus(finger(i).getLast().minus(rest).times(share));
        }
        Vec over = new Vec(0, .006, .012).times(Math.max(met, fingers.curl()));
        return List.of(THUMB_BASE, THUMB_BASE.towards(tip, .52).plus(over), tip);
    }

    private Ellipsoid ball(Vec point, double radius) {
        return Ellipsoid.ball(at.apply(point), radius * size);
    }
}
