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

    List<Piece> pieces(Camera camera) {
        List<Piece> pieces = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            frame(camera, pieces, back.z() + side * Furniture.SEAT_HALF_WIDTH);
        }
        double x = back.x();
        double z0 = back.z() - Furniture.SEAT_HALF_WIDTH;
        double z1 = back.z() + Furniture.SEAT_HALF_WIDTH;
        double top = Furniture.CHAIR_BACK;
        pieces.add(new Box(x - facing * LEG, front(), seat - SLAB, seat, z0 - LEG, z1 + LEG).piece(camera, Tone.WOOD));
        pieces.add(new Box(x - facing * 1.6 * LEG, x - facing * .3 * LEG, top - .12, top, z0, z1)
                .piece(camera, Tone.WOOD));
        return pieces;
    }

    private double front() {
        return back.x() + facing * Furniture.SEAT_DEPTH;
    }

    private void frame(Camera camera, List<Piece> pieces, double z) {
        double x = back.x();
        double front = front();
        pieces.add(post(front - facing * 2 * LEG, front, 0, seat - SLAB, z).piece(camera, Tone.WOOD_DARK));
        pieces.add(post(x - facing * 2 * LEG, x, 0, Furniture.CHAIR_BACK, z).piece(camera, Tone.WOOD_DARK));
        if (armrests) {
            double arm = Furniture.ARMREST;
            pieces.add(post(x, front - .02, arm - .02, arm, z).piece(camera, Tone.WOOD_DARK));
            pieces.add(post(front - .05, front - .03, seat, arm - .02, z).piece(camera, Tone.WOOD_DARK));
        }
    }

    private static Box post(double x0, double x1, double y0, double y1, double z) {
        return new Box(x0, x1, y0, y1, z - LEG, z + LEG);
    }
}
