package newel.screen;

import java.util.ArrayList;
import java.util.List;
import newel.client.Measured;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * How the client walks, as the path for falls asks it: walking speed in m/s, up-and-go in seconds over 3 metres, either null.
 *
 * <p>As published walking speed decides and up-and-go counts only where it is missing. In the variant either may raise the
 * level (that a slow walk still counts there is a design choice).
 */
record FallsGait(Measured speed, Measured upAndGo, FallsSet set) {
    /** Usual walking speed at or under this is impaired. */
    private static final double SLOW = 0.8;

    private static final Rule GAIT = new Rule("W3", FallsPath.WFG, Known.PARTLY);

    boolean askedOfEverybody() {
        return set == FallsSet.WIDER;
    }

    private boolean measured() {
        return upAndGo != null || set == FallsSet.AS_PUBLISHED && speed != null;
    }

    /** What was not measured is not taken as good. */
    boolean slow() {
        return !measured()
                || slowWalk()
                || upAndGoCounts() && (upAndGo.unable() || upAndGo.value() > set.upAndGoOver());
    }

    private boolean slowWalk() {
        return speed != null && (speed.unable() || speed.value() <= SLOW);
    }

    private boolean upAndGoCounts() {
        return upAndGo != null && (speed == null || set == FallsSet.WIDER);
    }

    List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        if (speed != null) {
            found.add(new Finding(GAIT, speedWords()));
        }
        if (upAndGoCounts()) {
            found.add(new Finding(set.rule(), upAndGoWords()));
        }
        if (!measured()) {
            found.add(new Finding(FallsPath.OPEN, missing()));
        }
        return List.copyOf(found);
    }

    private String speedWords() {
        return speed.unable()
                ? "Could not walk the measured way; impaired is 0.8 m/s or less."
                : "Walks at " + speed.result().rounded(3) + "; impaired is 0.8 m/s or less.";
    }

    private String upAndGoWords() {
        return upAndGo.unable()
                ? "Could not do the up and go; impaired is over %d s.".formatted(set.upAndGoOver())
                : "Up and go in %s; impaired is over %d s.".formatted(upAndGo.result(), set.upAndGoOver());
    }

    private String missing() {
        return set == FallsSet.WIDER
                ? "Up and go was not measured, and is asked of everybody."
                : "Has fallen, and neither walking speed nor up-and-go was measured.";
    }

    static List<Statement> stated() {
        List<Statement> stated = new ArrayList<>();
        stated.add(
                Area.state(
                        GAIT,
                        Area.FALLS,
                        "After a fall: usual walking speed of 0.8 m/s or less, or a slow up-and-go where it is missing: intermediate."));
        for (FallsSet each : FallsSet.values()) {
            stated.add(Area.state(each.rule(), Area.FALLS, each.words() + ": intermediate."));
        }
        return stated;
    }
}
