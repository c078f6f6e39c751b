package newel.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * A wall with its skirting board, drawn first, so that one nearer than the person does not hide them.
 *
 * @param board the skirting board, on the side of the room
 */
record Wall(Box panel, Box board) {
    private static final double THICK = 0.045;
    private static final double HALF_WIDTH = 0.34;
    private static final double BOARD = 0.055;
    private static final double BOARD_OUT = 0.010;
    static final double BEHIND_STANDING = 1.1;
    static final double BEHIND_SITTING = 0.9;

    /** Square to the way the person looks; its face at x, the room behind it (1) or ahead of it (−1). */
    static Wall across(double x, int into, double high) {
        return new Wall(
                Box.between(x, x + into * THICK, 0, high, -HALF_WIDTH, HALF_WIDTH),
                Box.between(x - into * BOARD_OUT, x, 0, BOARD, -HALF_WIDTH, HALF_WIDTH));
    }

    /** Along the way the person looks; its face at z. */
    static Wall along(double z, double from, double to) {
        int out = z < 0 ? -1 : 1;
        return new Wall(
                Box.between(from, to, 0, BEHIND_STANDING, z, z + out * THICK),
                Box.between(from, to, 0, BOARD, z - out * BOARD_OUT, z));
    }

    /** The post of a door frame beside a hand, and the beam above it. */
    static List<Piece> doorFrame(Brush brush, double x, double z) {
        int out = z < 0 ? -1 : 1;
        double inner = z - out * .015;
        Box post = Box.between(x, x + .06, 0, 1.10, inner, z + out * .055);
        Box wall = Box.between(x + .012, x + .048, 0, 1.10, z + out * .055, z + out * .20);
        Box beam = Box.between(x, x + .06, 1.10, 1.155, inner - out * .5, z + out * .20);
        Box other = Box.between(x, x + .06, 0, 1.10, inner - out * .5, inner - out * .43);
        return List.of(new Piece(
                Piece.What.THING,
                Piece.FIRST,
                List.of(
                        wall.outline(brush, Tone.WALL),
                        other.outline(brush, Tone.FRAME),
                        post.outline(brush, Tone.FRAME),
                        beam.outline(brush, Tone.FRAME))));
    }

    Piece piece(Brush brush) {
        List<Mark> marks = new ArrayList<>();
        marks.add(panel.outline(brush, Tone.WALL));
        marks.add(board.outline(brush, Tone.SKIRTING));
        return new Piece(Piece.What.THING, Piece.FIRST, marks);
    }
}
