package newel.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import newel.body.Contacts;
import newel.body.KeyPose;
import newel.body.Pose;
import newel.body.Posed;
import newel.body.Solver;

/** Head and shoulders of one look, for whoever chooses. */
public final class Portrait {
    private static final Camera FROM_THE_FRONT = new Camera(-62, 4);
    private static final double HALF_WIDTH = 42;
    /** Below the crown to the chest, points. */
    private static final double HIGH = 92;

    private static final double OVER_CROWN = 10;

    public static Picture of(Look look) {
        Posed posed = Solver.pose(new KeyPose("portrait", Pose.NEUTRAL, Contacts.NONE));
        List<Piece> pieces = new ArrayList<>(new Person(FROM_THE_FRONT, posed, look).pieces());
        pieces.sort(Comparator.comparingDouble(Piece::depth));
        List<Mark> marks =
                pieces.stream().flatMap(piece -> piece.inOrder().stream()).toList();
        Spot crown = FROM_THE_FRONT.see(posed.trunk().crown());
        Bounds window = new Bounds(
                crown.x() - HALF_WIDTH, crown.y() - OVER_CROWN, crown.x() + HALF_WIDTH, crown.y() - OVER_CROWN + HIGH);
        return new Picture(look.label(), look.label(), look.style(), List.of(new Frame("", window, marks, false)));
    }

    private Portrait() {}
}
