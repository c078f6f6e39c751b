package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Side;

/** A part of the scene that is drawn at one depth: its marks, haloed as one. */
record Piece(What what, double depth, List<Mark> marks) {
    enum What {
        TRUNK,
        HEAD,
        RIGHT_ARM,
        LEFT_ARM,
        RIGHT_LEG,
        LEFT_LEG,
        GHOST,
        THING;

        static What arm(Side side) {
            return side == Side.RIGHT ? RIGHT_ARM : LEFT_ARM;
        }

        static What leg(Side side) {
            return side == Side.RIGHT ? RIGHT_LEG : LEFT_LEG;
        }
    }

    /** Depth of what stands behind everything that moves. */
    static final double BEHIND = -1e5;
    /** Depth of what is drawn first, so that it hides nothing even where it is nearer than the person. */
    static final double FIRST = -1e6;

    static Piece thing(double depth, Mark... marks) {
        return new Piece(What.THING, depth, List.of(marks));
    }

    /** Halos first, so that no edge is drawn between the marks of one piece. */
    List<Mark> inOrder() {
        List<Mark> order = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Outline outline && outline.haloed()) {
                order.add(outline);
            }
        }
        for (Mark mark : marks) {
            order.add(
                    mark instanceof Mark.Outline o && o.haloed() ? new Mark.Outline(o.tone(), o.spots(), false) : mark);
        }
        return order;
    }
}
