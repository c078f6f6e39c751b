package newel.figure;

import java.util.List;
import newel.body.Vec;

/** Walls and door posts, drawn first, so that one nearer than the person does not hide them. */
final class Wall {
    private static final double HIGH = 1.12;
    private static final double THICK = 0.02;

    static Piece across(Camera camera, double x) {
        return first(new Box(x, x + THICK, 0, HIGH, -0.3, 0.3).outline(camera, Tone.WALL));
    }

    static Piece doorPost(Camera camera, Vec hand) {
        int side = hand.z() < 0 ? -1 : 1;
        double near = hand.z() - side * .02;
        double far = hand.z() + side * .10;
        return first(new Box(hand.x(), hand.x() + .05, 0, HIGH, Math.min(near, far), Math.max(near, far))
                .outline(camera, Tone.WALL));
    }

    private static Piece first(Mark mark) {
        return new Piece(Piece.What.THING, Piece.FIRST, List.of(mark));
    }

    private Wall() {}
}
