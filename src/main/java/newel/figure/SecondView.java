package newel.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import newel.body.Ground;
import newel.body.Posed;

/** The view beside the first, where one view cannot show the movement: a turn, or a way straight at the viewer. */
record SecondView(Camera camera, String caption) {
    private static final SecondView ABOVE = new SecondView(new Camera(-90, 62), "From above");
    private static final SecondView FRONT = new SecondView(new Camera(-90, 8), "From the front");
    private static final SecondView SIDE = new SecondView(new Camera(0, 8), "From the side");
    /** Less of the way than this is not enough, and so much is. */
    private static final double TOO_LITTLE = 0.5;

    private static final double ENOUGH = 0.8;
    /** From this height a turn is seen as it is, degrees. */
    private static final double HIGH = 35;
    /** Feet further apart than this are a stance to be seen, statures. */
    private static final double STRIDE = 0.1;
    /** More frames than this get no further one. */
    private static final int FRAMES = 3;

    static Optional<SecondView> of(Camera first, Posed hold, List<Stretch> stretches) {
        if (stretches.isEmpty()) {
            return stance(first, hold);
        }
        if (stretches.size() >= FRAMES) {
            return Optional.empty();
        }
        Stretch last = stretches.getLast();
        boolean turns = Turning.between(last.from(), last.to()).isPresent();
        return turns ? Optional.of(ABOVE).filter(v -> first.pitch() < HIGH) : better(first, Leading.ways(last));
    }

    private static Optional<SecondView> better(Camera first, List<Way> ways) {
        if (ways.isEmpty() || ways.getFirst().shown(first) > TOO_LITTLE) {
            return Optional.empty();
        }
        Way way = ways.getFirst();
        return Stream.of(FRONT, SIDE, ABOVE)
                .max(Comparator.comparingDouble(view -> way.shown(view.camera())))
                .filter(view -> way.shown(view.camera()) > ENOUGH);
    }

    /** Feet one behind the other are told from the side, feet side by side from the front. */
    private static Optional<SecondView> stance(Camera first, Posed posed) {
        boolean stands = posed.contacts().ground() == Ground.FEET;
        Way feet = new Way(
                Piece.What.THING,
                List.of(posed.rightLeg().ball(), posed.leftLeg().ball()));
        return stands && feet.length() > STRIDE ? better(first, List.of(feet)) : Optional.empty();
    }
}
