package newel.figure;

import java.util.ArrayList;
import java.util.List;
import newel.body.Furniture;
import newel.body.Vec;

/**
 * A chair.
 *
 * @param back where the front of its back rest meets the floor
 * @param facing 1 when it faces the way the person does, −1 when it faces them
 */
record Chair(Vec back, double seat, boolean armrests, int facing) {
    static final int WITH_THE_PERSON = 1;
    static final int TOWARDS_THE_PERSON = -1;
    private static final double LEG = 0.014;
    private static final double SLAB = 0.022;
    private static final double RUNG = 0.10;
    /** From the floor point of the back rest to the wall behind it. */
    private static final double CLEAR_OF_WALL = 0.036;

    List<Piece> pieces(Brush brush) {
        List<Piece> pieces = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            frame(brush, pieces, back.z() + side * Furniture.SEAT_HALF_WIDTH);
        }
        double z0 = back.z() - Furniture.SEAT_HALF_WIDTH - LEG;
        double z1 = back.z() + Furniture.SEAT_HALF_WIDTH + LEG;
        double x = back.x();
        pieces.add(Box.between(x - facing * LEG, front(), seat - SLAB, seat, z0, z1)
                .piece(brush, Tone.WOOD_EDGE, Tone.WOOD));
        double top = Furniture.CHAIR_BACK;
        slat(brush, pieces, top - .065, top);
        slat(brush, pieces, top - .155, top - .105);
        return pieces;
    }

    private void slat(Brush brush, List<Piece> pieces, double low, double high) {
        double x = back.x();
        pieces.add(Box.between(
                        x - facing * 1.6 * LEG,
                        x - facing * .3 * LEG,
                        low,
                        high,
                        back.z() - Furniture.SEAT_HALF_WIDTH,
                        back.z() + Furniture.SEAT_HALF_WIDTH)
                .piece(brush, Tone.WOOD));
    }

    double front() {
        return back.x() + facing * Furniture.SEAT_DEPTH;
    }

    /** Where a wall stands that the back rest touches. */
    double wall() {
        return back.x() - facing * CLEAR_OF_WALL;
    }

    private void frame(Brush brush, List<Piece> pieces, double z) {
        double x = back.x();
        double front = front();
        pieces.add(post(x - facing * 2 * LEG, front, RUNG, RUNG + .016, z, LEG * .6)
                .piece(brush, Tone.WOOD_DARK));
        pieces.add(post(front - facing * 2 * LEG, front, 0, seat - SLAB, z, LEG).piece(brush, Tone.WOOD_DARK));
        pieces.add(
                post(x - facing * 2 * LEG, x, 0, Furniture.CHAIR_BACK, z, LEG).piece(brush, Tone.WOOD_DARK));
        if (armrests) {
            double arm = Furniture.ARMREST;
            pieces.add(post(x, front - .02, arm - .02, arm, z, LEG * 1.3).piece(brush, Tone.WOOD_DARK));
            pieces.add(post(front - .05, front - .03, seat, arm - .02, z, LEG).piece(brush, Tone.WOOD_DARK));
        }
    }

    private static Box post(double x0, double x1, double y0, double y1, double z, double half) {
        return Box.between(x0, x1, y0, y1, z - half, z + half);
    }
}
