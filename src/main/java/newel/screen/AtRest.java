package newel.screen;

import java.util.ArrayList;
import java.util.List;
import newel.client.Vitals;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** What the signs at rest allow today. */
public sealed interface AtRest {
    Rule NOT_MEASURED = new Rule("NOT_MEASURED", "what is not measured is not taken as good", Known.DESIGN_CHOICE);

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

    /** By the list that the practice holds by. */
    static AtRest of(Vitals vitals, RestSet set) {
        List<RestRule> rules = RestRule.of(set);
        List<RestRule> holds = broken(rules, vitals, RestRule.Then.HOLD);
        List<RestRule> light = broken(rules, vitals, RestRule.Then.LIGHT_ONLY);
        if (!holds.isEmpty()) {
            return new Hold(urgency(holds), findings(holds, vitals));
        }
        if (!light.isEmpty()) {
            return new LightOnly(findings(light, vitals));
        }
        List<Finding> missing = missing(vitals);
        return missing.isEmpty() ? new Go() : new NotMeasured(missing);
    }

    static List<Statement> stated() {
        return List.of(Area.state(
                NOT_MEASURED,
                Area.AT_REST,
                "Pressure or pulse not measured: nothing harder than moderate until it is."));
    }

    private static Urgency urgency(List<RestRule> holds) {
        return holds.stream().map(RestRule::urgency).reduce(Urgency.ROUTINE, Urgency::higher);
    }

    private static List<RestRule> broken(List<RestRule> rules, Vitals vitals, RestRule.Then then) {
        return rules.stream()
                .filter(rule -> rule.then() == then && rule.broken().test(vitals))
                .toList();
    }

    private static List<Finding> findings(List<RestRule> rules, Vitals vitals) {
        return rules.stream().map(rule -> rule.finding(vitals)).toList();
    }

    private static List<Finding> missing(Vitals vitals) {
        List<Finding> missing = new ArrayList<>();
        if (vitals.systolic() == null || vitals.diastolic() == null) {
            missing.add(new Finding(NOT_MEASURED, "Blood pressure not measured."));
        }
        if (vitals.restingPulse() == null) {
            missing.add(new Finding(NOT_MEASURED, "Resting pulse not measured."));
        }
        return List.copyOf(missing);
    }
}
