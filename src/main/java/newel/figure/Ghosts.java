package newel.figure;

import java.util.List;
import java.util.stream.Stream;
import newel.body.Posed;
import newel.body.Side;

/** Outlines of what has moved, where it was in the pose before. */
final class Ghosts {
    /** A limb whose end moves more than this leaves a ghost, statures. */
    private static final double LEFT_BEHIND = 0.05;

    static List<Piece> of(Camera camera, Posed before, Posed now, Look look) {
        return new Person(camera, before, look)
                .pieces().stream()
                        .filter(piece -> moved(piece.what(), before, now))
                        .map(Ghosts::ghost)
                        .toList();
    }

    private static Piece ghost(Piece piece) {
        List<List<Spot>> outlines = piece.marks().stream()
                .filter(mark -> mark instanceof Mark.Outline && tells(piece, mark))
                .map(Mark::spots)
                .toList();
        // Edges first, so that only the edge of the whole is left.
        List<Mark> marks = Stream.of(Tone.GHOST_EDGE, Tone.GHOST)
                .flatMap(tone -> outlines.stream().<Mark>map(spots -> new Mark.Outline(tone, spots, false)))
                .toList();
        return new Piece(Piece.What.GHOST, Piece.BEHIND, marks);
    }

    /** Of trunk and head the largest outline alone, or the ghost would be a tangle. */
    private static boolean tells(Piece piece, Mark outline) {
        return switch (piece.what()) {
            case TRUNK -> outline == piece.marks().getLast();
            case HEAD -> outline == piece.marks().getFirst();
            case RIGHT_ARM, LEFT_ARM, RIGHT_LEG, LEFT_LEG, GHOST, THING -> true;
        };
    }

    private static boolean moved(Piece.What part, Posed a, Posed b) {
        double distance = switch (part) {
            case RIGHT_ARM -> palm(a, b, Side.RIGHT);
            case LEFT_ARM -> palm(a, b, Side.LEFT);
            case RIGHT_LEG -> ball(a, b, Side.RIGHT);
            case LEFT_LEG -> ball(a, b, Side.LEFT);
            case TRUNK, HEAD -> a.trunk().nose().distance(b.trunk().nose());
            case GHOST, THING -> 0;
        };
        return distance > LEFT_BEHIND;
    }

    private static double palm(Posed a, Posed b, Side side) {
        return a.arm(side).palm().distance(b.arm(side).palm());
    }

    private static double ball(Posed a, Posed b, Side side) {
        return a.leg(side).ball().distance(b.leg(side).ball());
    }

    private Ghosts() {}
}
