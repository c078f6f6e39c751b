package newel.assess;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import newel.assess.Steps.Step;
import newel.source.Rule;

/**
 * Points of the short physical performance battery.
 *
 * @param walks by length of the course in metres; no course borrows another's times
 * @param hold seconds that a stance must be held
 * @param tandemShort seconds heel to toe from which it earns its first point
 */
record SppbPoints(Rule rule, BigDecimal hold, BigDecimal tandemShort, Map<BigDecimal, Steps> walks, Steps stands) {

    static SppbPoints read(Mapping node) {
        Map<BigDecimal, Steps> walks = new HashMap<>();
        node.children("walks").forEach(walk -> {
            walks.put(walk.decimal("course"), steps(walk));
            walk.finish();
        });
        Mapping stands = node.child("stands");
        SppbPoints points = new SppbPoints(
                TableReader.rule(node), node.decimal("hold"), node.decimal("tandemShort"), walks, steps(stands));
        stands.finish();
        node.finish();
        return points;
    }

    private static Steps steps(Mapping node) {
        List<Step> steps = new ArrayList<>();
        for (Mapping each : node.children("points")) {
            boolean included = each.has("upTo");
            steps.add(new Step(each.decimal("earns").intValue(), each.decimal(included ? "upTo" : "under"), included));
            each.finish();
        }
        for (int i = 1; i < steps.size(); i++) {
            if (steps.get(i).seconds().compareTo(steps.get(i - 1).seconds()) <= 0
                    || steps.get(i).points() >= steps.get(i - 1).points()) {
                node.fault("its points do not fall as the time grows");
            }
        }
        return new Steps(List.copyOf(steps));
    }
}
