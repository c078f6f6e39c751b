package newel.figure;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import newel.body.Ground;
import newel.body.Hand;
import newel.body.Side;
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
            case RIGHT_LEG ->
                Optional.of(stands(stretches) && moves(stretches, Moving.LEFT_LEG) ? "left leg" : "right leg");
            case ONE_SIDE ->
                turned(stretches)
                        .or(() -> swayed(stretches))
                        .or(() -> moving(stretches))
                        .map(Caption::one);
            case ALTERNATING -> FirstSide.of(stretches).map(Caption::both);
        };
    }

    /** In lying the leg that is drawn in leaves the long one to stretch. */
    private static boolean stands(List<Stretch> stretches) {
        return stretches.getFirst().to().contacts().ground() != Ground.BED;
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

    private static String both(Side first) {
        return switch (first) {
            case RIGHT -> "right, then left";
            case LEFT -> "left, then right";
        };
    }

    /** A turn that tells more than the hand that goes furthest, which is carried or only finds something to hold. */
    private static Optional<Moving> turned(List<Stretch> stretches) {
        Stretch first = stretches.getFirst();
        boolean tells = Leading.ways(first).stream()
                .findFirst()
                .filter(way -> Trail.carried(way) || findsHold(first, way.part()))
                .isPresent();
        return tells
                ? Turning.between(first.from(), first.to())
                        .map(turn -> turn.degrees() > 0 ? Moving.TO_THE_RIGHT : Moving.TO_THE_LEFT)
                : Optional.empty();
    }

    /** Both legs lean to one side. */
    private static Optional<Moving> swayed(List<Stretch> stretches) {
        List<Way> legs = Leading.ways(stretches.getFirst()).stream()
                .filter(way -> way.part() == Piece.What.RIGHT_LEG || way.part() == Piece.What.LEFT_LEG)
                .toList();
        return legs.size() == 2 && aside(legs.getFirst()).equals(aside(legs.getLast()))
                ? aside(legs.getFirst())
                : Optional.empty();
    }

    private static boolean findsHold(Stretch stretch, Piece.What part) {
        return Stream.of(Side.values())
                .filter(side -> part == Piece.What.arm(side))
                .anyMatch(side -> findsHold(
                        stretch.from().contacts().hand(side).hold(),
                        stretch.to().contacts().hand(side).hold()));
    }

    private static boolean findsHold(Hand.Hold before, Hand.Hold after) {
        return before != after && after.support();
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
            case HEAD, TRUNK -> aside(way);
            case GHOST, THING -> Optional.empty();
        };
    }

    private static Optional<Moving> aside(Way way) {
        Vec moved = way.points().getLast().minus(way.points().getFirst());
        return Math.abs(moved.z()) < TO_A_SIDE
                ? Optional.empty()
                : Optional.of(moved.z() > 0 ? Moving.TO_THE_RIGHT : Moving.TO_THE_LEFT);
    }

    private Caption() {}
}
