package newel.coverage;

import newel.catalogue.Position;
import newel.catalogue.Support;
import newel.catalogue.Variant;

/** Posture and support together, from the easiest to keep to the hardest. */
enum Place {
    LYING("lying"),
    SEATED_BACK("sitting, back rest"),
    SEATED_EDGE("sitting, edge"),
    STANDING_HELD("standing, both hands or leaning"),
    STANDING_ONE_HAND("standing, one hand"),
    STANDING_FINGERTIPS("standing, fingertips"),
    STANDING_FREE("standing, no hands"),
    STEPPING_HELD("stepping, hands held"),
    STEPPING_FREE("stepping, no hands"),
    FLOOR("to the floor");

    private final String words;

    Place(String words) {
        this.words = words;
    }

    boolean of(Variant variant) {
        return this == of(variant.position(), variant.support());
    }

    private static Place of(Position position, Support support) {
        return switch (position) {
            case LYING -> LYING;
            case SEATED_BACK -> SEATED_BACK;
            case SEATED_EDGE -> SEATED_EDGE;
            case STANDING -> standing(support);
            case STEPPING -> support == Support.NONE ? STEPPING_FREE : STEPPING_HELD;
            case FLOOR -> FLOOR;
        };
    }

    private static Place standing(Support support) {
        return switch (support) {
            case FULL, TWO_HANDS -> STANDING_HELD;
            case ONE_HAND -> STANDING_ONE_HAND;
            case FINGERTIPS -> STANDING_FINGERTIPS;
            case NONE -> STANDING_FREE;
        };
    }

    @Override
    public String toString() {
        return words;
    }
}
