package newel.limit;

import java.util.stream.Stream;
import newel.catalogue.Position;
import newel.catalogue.Support;

/** Positions and supports as they stand in a sentence. */
final class Stances {
    static String doing(Stream<Position> positions) {
        return positions
                .map(position -> switch (position) {
                    case LYING -> "lying down";
                    case SEATED_BACK -> "sitting back";
                    case SEATED_EDGE -> "sitting without a back rest";
                    case STANDING -> "standing";
                    case STEPPING -> "stepping";
                    case FLOOR -> "on the floor";
                })
                .distinct()
                .reduce((a, b) -> a + " and " + b)
                .orElse("");
    }

    static String holding(Support support) {
        return switch (support) {
            case FULL -> "full support";
            case TWO_HANDS -> "two hands on a support";
            case ONE_HAND -> "one hand on a support";
            case FINGERTIPS -> "fingertips on a support";
            case NONE -> "no hand on a support";
        };
    }

    static String needed(Support least) {
        return switch (least) {
            case FULL -> "full support is";
            case TWO_HANDS -> "two hands are";
            case ONE_HAND -> "one hand is";
            case FINGERTIPS -> "fingertips are";
            case NONE -> "nothing is";
        };
    }

    private Stances() {}
}
