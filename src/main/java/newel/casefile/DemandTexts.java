package newel.casefile;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import newel.body.Demands;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Peak;

/** What an item asks of the body, as JSON. */
final class DemandTexts {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    /** Angles in whole degrees, loads in body weight times stature, lengths in statures. */
    static ObjectNode write(Demands asked) {
        ObjectNode node = JSON.objectNode();
        ObjectNode angles = node.putObject("angles");
        for (Motion motion : Motion.values()) {
            sides(angles, motion, asked.angles(), 1);
        }
        ObjectNode loads = node.putObject("loads");
        for (Joint joint : Joint.values()) {
            sides(loads, joint, asked.loads(), 10_000);
        }
        node.put("balanceMargin", rounded(asked.margin(), 1000));
        node.put("fingertips", rounded(asked.fingertips(), 1000));
        node.put("headBelowHeart", asked.headBelowHeart());
        return node;
    }

    private static <E extends Enum<E>> void sides(ObjectNode node, E key, Map<E, Peak> peaks, int grain) {
        Peak peak = peaks.getOrDefault(key, Peak.ZERO);
        if (peak.most() * grain >= 0.5) {
            node.putObject(CaseWriter.plain(key))
                    .put("left", rounded(peak.left(), grain))
                    .put("right", rounded(peak.right(), grain));
        }
    }

    private static double rounded(double value, int grain) {
        return Double.isFinite(value) ? Math.rint(value * grain) / grain : 0;
    }

    private DemandTexts() {}
}
