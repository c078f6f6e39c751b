package newel.figure;

import newel.body.Furniture;

/** The bed that someone lies on, drawn first. */
final class Bed {
    static Piece piece(Camera camera) {
        return Piece.thing(
                Piece.FIRST,
                new Box(-0.62, 0.62, 0.02, Furniture.BED, -0.2, 0.2).outline(camera, Tone.BED),
                new Box(-0.56, -0.30, Furniture.BED, Furniture.BED + .035, -0.13, 0.13).outline(camera, Tone.PILLOW));
    }

    private Bed() {}
}
