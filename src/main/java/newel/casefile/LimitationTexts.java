package newel.casefile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Presets;

/** Limitations as JSON, so written that reading gives the same limits. */
final class LimitationTexts {
    private static final Presets PRESETS = Presets.read();

    /** A preset by its name, one's own angles one by one; whatever those would not give back is written out whole. */
    static void write(Limitation each, ArrayNode list) {
        boolean angles = each.limits().stream().allMatch(Limit.Angle.class::isInstance);
        if (each.preset().isEmpty() && angles && !each.limits().isEmpty()) {
            each.limits().forEach(limit -> angle((Limit.Angle) limit, each, list));
            return;
        }
        ObjectNode node = list.addObject();
        if (!each.preset().isEmpty()) {
            node.put("preset", each.preset());
        }
        node.put("side", CaseWriter.plain(each.side()));
        if (!asPreset(each)) {
            node.set("limits", LimitTexts.write(each.limits()));
        }
        dated(node, each);
    }

    private static boolean asPreset(Limitation each) {
        return PRESETS.find(each.preset())
                .map(preset -> preset.limits(each.side()).equals(each.limits()))
                .orElse(false);
    }

    private static void angle(Limit.Angle angle, Limitation each, ArrayNode list) {
        ObjectNode node = list.addObject();
        String joint = joint(CaseWriter.plain(angle.motion()));
        node.putObject("limit")
                .put("joint", joint)
                .put("motion", CaseWriter.plain(angle.motion()).substring(joint.length() + 1))
                .put("side", CaseWriter.plain(angle.side()))
                .put("maxDegrees", angle.maxDegrees());
        dated(node, each);
    }

    private static String joint(String motion) {
        return motion.startsWith("low-back")
                ? "low-back"
                : motion.startsWith("upper-back") ? "upper-back" : motion.substring(0, motion.indexOf('-'));
    }

    private static void dated(ObjectNode node, Limitation each) {
        node.put("since", each.since().toString());
        if (each.review() != null) {
            node.put("review", each.review().toString());
        }
        node.put("source", CaseWriter.plain(each.source()));
    }

    private LimitationTexts() {}
}
