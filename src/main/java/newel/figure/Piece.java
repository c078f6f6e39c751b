package newel.figure;

import java.util.ArrayList;
import java.util.List;

/** A part of the scene that is drawn at one depth: its marks, haloed as one. */
record Piece(String name, double depth, List<Mark> marks) {
    static Piece of(String name, double depth, Mark... marks) {
        return new Piece(name, depth, List.of(marks));
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
