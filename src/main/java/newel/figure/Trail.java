package newel.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import newel.body.Vec;

/** Arrows along the true path of what leads: large where it moves far, beside it and enlarged where it moves little. */
record Trail(Camera camera, Stretch stretch, Scene.Working working, List<Piece> figure, List<List<Vec>> loops) {
    /** Two arrows closer than this, in points, would be one on top of the other. */
    private static final double SAME = 14;
    /** Two small arrows must stand further apart, points. */
    private static final double SAME_SMALL = 34;
    /** A way that draws shorter than this cannot be read where it is, points. */
    private static final double SMALL = 22;

    private static final double ENLARGED = 34;
    /** Width of a small loop as drawn, points. */
    private static final double LOOP = 26;
    /** A way straight towards the viewer draws as a dot and tells nothing. */
    private static final double SEEN = 1.5;
    /** A hand that goes this far tells more than the turn of the trunk that carries it, statures. */
    private static final double TELLS_MORE = 0.12;

    private static final int MOST = 2;

    List<Mark> arrows() {
        if (!loops.isEmpty()) {
            return loops.stream().map(this::round).toList();
        }
        Optional<Tilting> tilt = Tilting.in(stretch);
        if (tilt.isPresent()) {
            return List.of(Stroke.arrow(tilt.get().arc(camera)));
        }
        List<Way> ways = Leading.ways(stretch);
        Optional<Turning> turn = Turning.between(stretch.from(), stretch.to());
        return turn.isPresent() && ways.stream().allMatch(Trail::carried) ? turned(turn.get()) : along(ways);
    }

    private Mark round(List<Vec> points) {
        List<Spot> spots = points.stream().map(camera::see).toList();
        double wide = Math.max(Bounds.of(spots).width(), Bounds.of(spots).height());
        return Stroke.arrow(new Beside(figure).place(spots, Math.max(1, LOOP / wide)));
    }

    /** A turn of the trunk tells more than this way. */
    static boolean carried(Way way) {
        return switch (way.part()) {
            case HEAD, TRUNK -> true;
            case RIGHT_ARM, LEFT_ARM -> way.length() < TELLS_MORE;
            case RIGHT_LEG, LEFT_LEG, GHOST, THING -> false;
        };
    }

    private List<Mark> turned(Turning turn) {
        List<Mark> marks = new ArrayList<>();
        marks.add(Stroke.arrow(turn.arc(camera, false)));
        if (working == Scene.Working.ALTERNATING) {
            marks.add(Stroke.arrow(turn.arc(camera, true)));
        }
        return marks;
    }

    private List<Mark> along(List<Way> ways) {
        List<List<Spot>> drawn = new ArrayList<>();
        ways.stream()
                .sorted(Comparator.comparingDouble(
                        way -> -camera.see(way.points().getLast()).depth()))
                .forEach(way -> draw(way, drawn));
        return drawn.stream().map(Stroke::arrow).toList();
    }

    private void draw(Way way, List<List<Spot>> drawn) {
        List<Spot> spots = way.seen(camera);
        double length = Stroke.length(spots);
        boolean small = length < SMALL;
        if (drawn.size() >= MOST || length < SEEN || drawn.stream().anyMatch(o -> near(o, spots, small))) {
            return;
        }
        drawn.add(small ? new Beside(figure).place(spots, ENLARGED / length) : spots);
        if (working == Scene.Working.ALTERNATING && middle(way.part()) && drawn.size() < MOST) {
            List<Spot> other = way.mirrored().seen(camera);
            drawn.add(small ? new Beside(figure).place(other, ENLARGED / length) : other);
        }
    }

    private static boolean middle(Piece.What part) {
        return part == Piece.What.HEAD || part == Piece.What.TRUNK;
    }

    private static boolean near(List<Spot> a, List<Spot> b, boolean small) {
        return Stroke.middle(a).distance(Stroke.middle(b)) < (small ? SAME_SMALL : SAME)
                || a.getFirst().distance(b.getFirst()) < SAME && a.getLast().distance(b.getLast()) < SAME;
    }
}
