package newel.screen;

import java.util.ArrayList;
import java.util.List;
import newel.client.Vitals;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;

/** What the signs at rest allow today. */
public sealed interface AtRest {
    List<Finding> reasons();

    record Go() implements AtRest {
        @Override
        public List<Finding> reasons() {
            return List.of();
        }
    }

    /** Pressure or pulse was not measured: no harder than moderate until it is (design choice). */
    record NotMeasured(List<Finding> reasons) implements AtRest {}

    /** Light work only, no resistance, and the doctor is told. */
    record LightOnly(List<Finding> reasons) implements AtRest {}

    record Hold(Urgency urgency, List<Finding> reasons) implements AtRest {}

    static AtRest of(Vitals vitals) {
        List<RestRule> holds = broken(vitals, RestRule.Then.HOLD);
        List<RestRule> light = broken(vitals, RestRule.Then.LIGHT_ONLY);
        if (!holds.isEmpty()) {
            return new Hold(urgency(holds), findings(holds, vitals));
        }
        if (!light.isEmpty()) {
            return new LightOnly(findings(light, vitals));
        }
        List<Finding> missing = missing(vitals);
        return missing.isEmpty() ? new Go() : new NotMeasured(missing);
    }

    private static Urgency urgency(List<RestRule> holds) {
        return holds.stream().map(RestRule::urgency).reduce(Urgency.ROUTINE, Urgency::higher);
    }

    private static List<RestRule> broken(Vitals vitals, RestRule.Then then) {
        return RestRule.ALL.stream()
                .filter(rule -> rule.then() == then && rule.broken().test(vitals))
                .toList();
    }

    private static List<Finding> findings(List<RestRule> rules, Vitals vitals) {
        return rules.stream().map(rule -> rule.finding(vitals)).toList();
    }

    private static List<Finding> missing(Vitals vitals) {
        Rule rule = new Rule("NOT_MEASURED", "what is not measured is not taken as good", Known.DESIGN_CHOICE);
        List<Finding> missing = new ArrayList<>();
        if (vitals.systolic() == null || vitals.diastolic() == null) {
            missing.add(new Finding(rule, "Blood pressure not measured."));
        }
        if (vitals.restingPulse() == null) {
            missing.add(new Finding(rule, "Resting pulse not measured."));
        }
        return List.copyOf(missing);
    }
}
