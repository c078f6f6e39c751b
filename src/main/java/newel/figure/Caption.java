package newel.figure;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import newel.body.Vec;

/** Words under the figure that tell left from right. */
final class Caption {
    /** The head goes this far to a side, statures, when the trunk works to it. */
    private static final double TO_A_SIDE = 0.02;
    /** A limb that goes this far is the one that is looked at, statures. */
    private static final double FAR = 0.15;

    static Optional<String> side(Scene scene, List<Stretch> stretches) {
        if (stretches.isEmpty()) {
            return Optional.empty();
        }
        return switch (scene.working()) {
            case TOGETHER -> Optional.empty();
            case RIGHT_ARM -> Optional.of(moves(stretches, Moving.LEFT_ARM) ? "left arm" : "right arm");
            case RIGHT_LEG -> Optional.of(moves(stretches, Moving.LEFT_LEG) ? "left leg" : "right leg");
            case ONE_SIDE -> moving(stretches).map(Caption::one);
            case ALTERNATING -> moving(stretches).map(Caption::both);
        };
    }

    private enum Moving {
        RIGHT_ARM,
        LEFT_ARM,
        RIGHT_LEG,
        LEFT_LEG,
        TO_THE_RIGHT,
        TO_THE_LEFT
    }

    private static String one(Moving what) {
        return what.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String both(Moving what) {
        return switch (what) {
            case RIGHT_ARM, RIGHT_LEG, TO_THE_RIGHT -> "right, then left";
            case LEFT_ARM, LEFT_LEG, TO_THE_LEFT -> "left, then right";
        };
    }

    private static Optional<Moving> moving(List<Stretch> stretches) {
        return Leading.ways(stretches.getFirst()).stream().findFirst().flatMap(Caption::moving);
    }

    /** The other limb does the moving that is seen. */
    private static boolean moves(List<Stretch> stretches, Moving what) {
        return Leading.ways(stretches.getFirst()).stream()
                .findFirst()
                .filter(way -> way.length() > FAR)
                .flatMap(Caption::moving)
                .filter(what::equals)
                .isPresent();
    }

    private static Optional<Moving> moving(Way way) {
        return switch (way.part()) {
            case RIGHT_ARM -> Optional.of(Moving.RIGHT_ARM);
            case LEFT_ARM -> Optional.of(Moving.LEFT_ARM);
            case RIGHT_LEG -> Optional.of(Moving.RIGHT_LEG);
            case LEFT_LEG -> Optional.of(Moving.LEFT_LEG);
            case HEAD, TRUNK -> trunk(way);
            case GHOST, THING -> Optional.empty();
        };
    }

    private static Optional<Moving> trunk(Way way) {
        Vec moved = way.points().getLast().minus(way.points().getFirst());
        return Math.abs(moved.z()) < TO_A_SIDE
                ? Optional.empty()
                : Optional.of(moved.z() > 0 ? Moving.TO_THE_RIGHT : Moving.TO_THE_LEFT);
    }

    private Caption() {}
}
