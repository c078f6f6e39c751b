package newel.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import newel.body.Contacts;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.KeyPose;
import newel.body.Path;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Solver;
import newel.body.Vec;

/** Draws a movement's key poses as frames at one scale: the ghost of the pose before, the scene, the arrows. */
public final class Drawing {
    private static final double MARGIN = 14;
    /** A limb whose end moves more than this leaves a ghost, statures. */
    private static final double LEFT_BEHIND = 0.05;
    /** Poses no further apart than this are one picture, statures. */
    private static final double SAME_POSE = 0.006;

    private final Camera camera;
    private final boolean wallBehind;
    private final List<KeyPose> keyPoses;

    public Drawing(double yaw, double pitch, boolean wallBehind, List<KeyPose> keyPoses) {
        this.camera = new Camera(ViewPoint.yaw(yaw, keyPoses), pitch);
        this.wallBehind = wallBehind;
        this.keyPoses = keyPoses;
    }

    public Picture picture(String title, String description) {
        List<KeyPose> shown = told(keyPoses);
        Path path = new Path(shown);
        List<List<Mark>> drawn = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            drawn.add(marks(path, i));
        }
        return new Picture(title, description, framed(drawn));
    }

    /**
     * The poses that tell it: a last pose that mirrors the one before, or returns to the first, is left out, and a hold is
     * one pose; of more than three the first, the second and the last stay.
     */
    private static List<KeyPose> told(List<KeyPose> keyPoses) {
        List<KeyPose> told = new ArrayList<>(keyPoses);
        while (told.size() > 1
                && (same(told.getFirst(), told.getLast())
                        || told.size() > 2 && mirrors(told.get(told.size() - 2), told.getLast()))) {
            told.removeLast();
        }
        return told.size() > 3 ? List.of(told.get(0), told.get(1), told.getLast()) : told;
    }

    private static boolean same(KeyPose a, KeyPose b) {
        return apart(Solver.pose(a), Solver.pose(b), 1) < SAME_POSE;
    }

    private static boolean mirrors(KeyPose a, KeyPose b) {
        return apart(Solver.pose(a), Solver.pose(b), -1) < 0.04;
    }

    private static double apart(Posed a, Posed b, int sign) {
        double most = 0;
        for (Side side : Side.values()) {
            Side there = sign > 0 ? side : side.other();
            most = Math.max(
                    most,
                    flipped(a.arm(side).palm(), sign).distance(b.arm(there).palm()));
            most = Math.max(
                    most,
                    flipped(a.leg(side).ankle(), sign).distance(b.leg(there).ankle()));
            most = Math.max(
                    most,
                    flipped(a.leg(side).ball(), sign).distance(b.leg(there).ball()));
        }
        return Math.max(most, flipped(a.trunk().nose(), sign).distance(b.trunk().nose()));
    }

    private static Vec flipped(Vec v, int sign) {
        return new Vec(v.x(), v.y(), sign * v.z());
    }

    private List<Mark> marks(Path path, int key) {
        Posed posed = path.keys().get(key);
        List<Mark> marks = new ArrayList<>();
        if (posed.contacts().ground() != Ground.BED) {
            marks.add(shadow(posed));
        }
        Furnishings room = new Furnishings(camera, posed);
        List<Piece> pieces = new ArrayList<>(room.pieces(wallBehind));
        sitting().ifPresent(contacts -> pieces.addAll(room.seat(contacts, armrests())));
        pieces.addAll(new Person(camera, posed).pieces());
        pieces.addAll(new InHand(camera, posed).pieces());
        if (key > 0) {
            pieces.addAll(ghosts(path.keys().get(key - 1), posed));
        }
        pieces.sort(Comparator.comparingDouble(Piece::depth));
        pieces.forEach(piece -> marks.addAll(piece.inOrder()));
        if (key > 0) {
            marks.addAll(new Trail(camera, path, key - 1).arrows());
        }
        return marks;
    }

    private Optional<Contacts> sitting() {
        return keyPoses.stream()
                .map(KeyPose::contacts)
                .filter(c -> c.ground() == Ground.SEAT_BACK || c.ground() == Ground.SEAT_EDGE)
                .findFirst();
    }

    private boolean armrests() {
        return keyPoses.stream()
                .map(KeyPose::contacts)
                .anyMatch(c -> c.rightHand().hold() == Hand.Hold.ARMREST
                        || c.leftHand().hold() == Hand.Hold.ARMREST);
    }

    /** Limbs of the pose before that have moved, as outlines. */
    private List<Piece> ghosts(Posed before, Posed now) {
        List<Piece> ghosts = new ArrayList<>();
        for (Piece piece : new Person(camera, before).pieces()) {
            if (moved(piece.name(), before, now)) {
                List<Mark> outlines = piece.marks().stream()
                        .filter(mark -> mark instanceof Mark.Outline outline && tells(piece, outline))
                        .<Mark>map(mark -> new Mark.Outline(Tone.GHOST, mark.spots(), false))
                        .toList();
                ghosts.add(new Piece("ghost", -1e5, outlines));
            }
        }
        return ghosts;
    }

    /** Of trunk and head the largest outline alone, or the ghost would be a tangle. */
    private static boolean tells(Piece piece, Mark.Outline outline) {
        return switch (piece.name()) {
            case "trunk" -> outline == piece.marks().getLast();
            case "head" -> outline == piece.marks().getFirst();
            default -> true;
        };
    }

    private static boolean moved(String name, Posed a, Posed b) {
        double distance = switch (name) {
            case "arm RIGHT" -> a.rightArm().palm().distance(b.rightArm().palm());
            case "arm LEFT" -> a.leftArm().palm().distance(b.leftArm().palm());
            case "leg RIGHT" -> a.rightLeg().ball().distance(b.rightLeg().ball());
            case "leg LEFT" -> a.leftLeg().ball().distance(b.leftLeg().ball());
            default -> a.trunk().nose().distance(b.trunk().nose());
        };
        return distance > LEFT_BEHIND;
    }

    /** Grounds the figure: a flat patch on the floor under the pelvis and the feet. */
    private Mark shadow(Posed posed) {
        List<Spot> spots = new ArrayList<>();
        Vec middle = posed.trunk().pelvis();
        for (Vec at : List.of(middle, posed.rightLeg().ankle(), posed.leftLeg().ankle())) {
            for (int i = 0; i < 16; i++) {
                double angle = Math.PI * i / 8;
                spots.add(camera.see(new Vec(at.x() + .09 * Math.cos(angle) + .02, 0, at.z() + .07 * Math.sin(angle))));
            }
        }
        List<Spot> flat = Solid.hull(spots);
        double y = camera.see(Vec.ZERO).y();
        return new Mark.Outline(
                Tone.SHADOW,
                flat.stream()
                        .map(s -> new Spot(s.x(), Math.max(s.y(), y - 3) + (s.y() > y ? 2 : 0), s.depth()))
                        .toList(),
                false);
    }

    /** One window size for all frames, so that they stand side by side at one scale. */
    private List<Frame> framed(List<List<Mark>> drawn) {
        double left = drawn.stream()
                        .flatMap(List::stream)
                        .flatMap(m -> m.spots().stream())
                        .mapToDouble(Spot::x)
                        .min()
                        .orElse(0)
                - MARGIN;
        double right = drawn.stream()
                        .flatMap(List::stream)
                        .flatMap(m -> m.spots().stream())
                        .mapToDouble(Spot::x)
                        .max()
                        .orElse(1)
                + MARGIN;
        double top = drawn.stream()
                        .flatMap(List::stream)
                        .flatMap(m -> m.spots().stream())
                        .mapToDouble(Spot::y)
                        .min()
                        .orElse(0)
                - MARGIN;
        double bottom = Math.max(
                        4,
                        drawn.stream()
                                .flatMap(List::stream)
                                .flatMap(m -> m.spots().stream())
                                .mapToDouble(Spot::y)
                                .max()
                                .orElse(1))
                + 6;
        double floor = camera.see(Vec.ZERO).y();
        List<Frame> frames = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            List<Mark> marks = new ArrayList<>();
            marks.add(new Mark.Line(
                    Tone.FLOOR, List.of(new Spot(left + 4, floor + 1, 0), new Spot(right - 4, floor + 1, 0)), 1.5));
            marks.addAll(drawn.get(i));
            frames.add(new Frame(caption(i, drawn.size()), left, top, right - left, bottom - top, marks));
        }
        return frames;
    }

    private static String caption(int i, int frames) {
        return frames == 1 ? "Hold" : i == 0 ? "Start" : i == frames - 1 ? "Finish" : "On the way";
    }
}
