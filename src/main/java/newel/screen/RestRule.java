package newel.screen;

import static newel.screen.RestRule.Then.*;
import static newel.screen.Urgency.*;
import static newel.source.Known.*;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import newel.client.Vitals;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;

/**
 * One line on signs at rest. The set is the strictest one written for community instructors; choosing it is a design choice.
 *
 * @param broken never true for what was not measured
 */
public record RestRule(Rule rule, Then then, Urgency urgency, Predicate<Vitals> broken, Function<Vitals, String> text) {
    public enum Then {
        HOLD,
        /** Light work only, no resistance, and the doctor is told. */
        LIGHT_ONLY
    }

    private static final String BACR = "BACR 2006, phase IV instructor manual";
    private static final String OURS = "no primary source found";

    /** Order matters: the urgent line on pressure comes before the wider one. */
    public static final List<RestRule> ALL = List.of(
            hold(
                    "PRESSURE",
                    "ESC/ESH; " + BACR,
                    FROM_MEMORY,
                    EMERGENCY,
                    v -> severePressure(v) && felt(v),
                    r -> pressure(r) + " It is very high, and felt or not known."),
            hold(
                    "PRESSURE",
                    "ESC/ESH; " + BACR,
                    FROM_MEMORY,
                    SAME_DAY,
                    v -> severePressure(v) && !felt(v),
                    RestRule::pressure),
            hold(
                    "PRESSURE",
                    BACR,
                    SEEN,
                    ROUTINE,
                    v -> !severePressure(v) && pressureFrom(v, 180, 100),
                    RestRule::pressure),
            hold(
                    "PULSE",
                    BACR,
                    SEEN,
                    ROUTINE,
                    v -> over(v.restingPulse(), 100) && !over(v.restingPulse(), 120),
                    r -> pulse(r, "over 100")),
            hold(
                    "PULSE",
                    "Australian heart-failure guidance",
                    SEEN,
                    SAME_DAY,
                    v -> over(v.restingPulse(), 120),
                    r -> pulse(r, "over 120")),
            hold(
                    "SPO2",
                    OURS,
                    DESIGN_CHOICE,
                    SAME_DAY,
                    v -> under(v.oxygen(), 90),
                    r -> "Oxygen " + r.oxygen() + " %, under 90 %."),
            hold(
                    "FEVER",
                    BACR,
                    SEEN,
                    ROUTINE,
                    v -> v.temperatureC() != null && v.temperatureC() > 38,
                    r -> "Temperature " + r.temperatureC() + " °C, over 38 °C."),
            hold(
                    "POSTURAL",
                    "Freeman et al. 2011, Clin Auton Res 21:69-72",
                    SEEN,
                    ROUTINE,
                    v -> from(v.posturalDrop(), 20) && felt(v),
                    r -> "Pressure falls by " + r.posturalDrop() + " on standing, and it is felt or not known."),
            hold(
                    "WEIGHT",
                    "Australian heart-failure guidance",
                    SEEN,
                    SAME_DAY,
                    v -> v.weightGainKg() != null && v.weightGainKg() >= 2,
                    r -> "Gained " + r.weightGainKg() + " kg in 1 to 3 days."),
            hold(
                    "LOW_PRESSURE",
                    "UK list; under 90 is ours",
                    DESIGN_CHOICE,
                    SAME_DAY,
                    v -> under(v.systolic(), 90) && felt(v),
                    r -> pressure(r) + " It is low, and felt or not known."),
            hold(
                    "SLOW_PULSE",
                    OURS,
                    DESIGN_CHOICE,
                    SAME_DAY,
                    v -> under(v.restingPulse(), 40) || under(v.restingPulse(), 50) && felt(v),
                    r -> pulse(r, "slow")),
            new RestRule(
                    new Rule("PRESSURE_RAISED", "the band under the hold line of " + BACR, DESIGN_CHOICE),
                    LIGHT_ONLY,
                    ROUTINE,
                    v -> pressureFrom(v, 160, 90) && !pressureFrom(v, 180, 100),
                    RestRule::pressure));

    public Finding finding(Vitals vitals) {
        return new Finding(rule, text.apply(vitals));
    }

    /** 180/110 or more is a same-day matter, and an emergency when it is felt (ESC/ESH, from memory). */
    private static boolean severePressure(Vitals v) {
        return pressureFrom(v, 180, 110);
    }

    private static RestRule hold(
            String id,
            String citation,
            Known known,
            Urgency urgency,
            Predicate<Vitals> broken,
            Function<Vitals, String> text) {
        return new RestRule(new Rule(id, citation, known), HOLD, urgency, broken, text);
    }

    private static boolean pressureFrom(Vitals v, int systolic, int diastolic) {
        return from(v.systolic(), systolic) || from(v.diastolic(), diastolic);
    }

    private static boolean felt(Vitals v) {
        return v.symptoms().yesOrUnknown();
    }

    private static boolean from(Integer value, int bound) {
        return value != null && value >= bound;
    }

    private static boolean over(Integer value, int bound) {
        return value != null && value > bound;
    }

    private static boolean under(Integer value, int bound) {
        return value != null && value < bound;
    }

    private static String pressure(Vitals v) {
        return "Blood pressure " + shown(v.systolic()) + "/" + shown(v.diastolic()) + ".";
    }

    private static String shown(Integer value) {
        return value == null ? "not measured" : value.toString();
    }

    private static String pulse(Vitals v, String how) {
        return "Resting pulse " + v.restingPulse() + ", " + how + ".";
    }
}
