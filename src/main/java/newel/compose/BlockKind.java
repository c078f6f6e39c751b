package newel.compose;

import java.util.List;
import newel.catalogue.Kind;

/** The parts of a session. */
public enum BlockKind {
    WARM_UP("Warm-up"),
    BALANCE("Balance"),
    ROUND("Round"),
    COOL_DOWN("Cool-down");

    private final String words;

    BlockKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The kinds of movement that may stand in it, the usual one first. */
    public List<Kind> kinds() {
        return switch (this) {
            case WARM_UP -> List.of(Kind.PULSE, Kind.MOBILITY);
            case BALANCE -> List.of(Kind.BALANCE);
            case ROUND -> List.of(Kind.STRENGTH, Kind.PULSE);
            case COOL_DOWN -> List.of(Kind.STRETCH, Kind.MOBILITY, Kind.BREATH);
        };
    }
}
