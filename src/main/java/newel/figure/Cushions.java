package newel.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import newel.body.Foot;
import newel.body.Furniture;
import newel.body.Posed;
import newel.body.Side;
import newel.body.Vec;

/** Cushions that wait for a knee: stacked where it kneels, or on the bed where it sinks to. */
record Cushions(Brush brush, Set<Thing> things, List<Posed> keys) {
    /** Thickness of one, statures (by eye). */
    private static final double LAYER = 0.065;
    /** A leg that leans lies on the middle of its cushion, further out than its knee. */
    private static final double OUT = 0.035;
    /** A thigh and a shank rest this far above the cushion's face, measured at the middle of the knee. */
    private static final double KNEE = 0.032;

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        if (things.contains(Thing.CUSHIONS_TO_KNEEL_ON)) {
            kneeling().ifPresent(foot -> pieces.addAll(stack(foot)));
        }
        if (things.contains(Thing.CUSHION_BESIDE_KNEES)) {
            pieces.addAll(caught(Side.RIGHT));
        }
        if (things.contains(Thing.CUSHIONS_BESIDE_KNEES)) {
            pieces.addAll(caught(Side.RIGHT));
            pieces.addAll(caught(Side.LEFT));
        }
        return pieces;
    }

    private Optional<Foot> kneeling() {
        return keys.stream()
                .map(posed -> posed.contacts().rightFoot())
                .filter(Foot::kneels)
                .findFirst();
    }

    private List<Piece> stack(Foot foot) {
        return layers(new Vec(foot.x(), 0, foot.z()), 0, foot.height());
    }

    /** Under the knee in the last pose, from the bed up. */
    private List<Piece> caught(Side side) {
        Vec knee = keys.getLast().leg(side).knee();
        Vec out = knee.plus(new Vec(0, 0, side.sign() * OUT));
        return layers(out, Furniture.BED, Math.max(Furniture.BED + LAYER, knee.y() - KNEE));
    }

    private List<Piece> layers(Vec middle, double low, double high) {
        int count = Math.max(1, (int) Math.round((high - low) / LAYER));
        double each = (high - low) / count;
        return IntStream.range(0, count)
                .mapToObj(i -> Soft.cushion(brush, new Vec(middle.x(), low + (i + .5) * each, middle.z()), each / 2))
                .toList();
    }
}
