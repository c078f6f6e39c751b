package newel.screen;

import static newel.screen.Reading.*;
import static newel.screen.RestRule.Then.*;
import static newel.screen.Urgency.*;
import static newel.source.Known.*;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import newel.client.Vitals;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * One line on signs at rest.
 *
 * @param broken never true for what was not measured
 * @param text what is told of a person
 * @param says what the line says of anybody
 */
public record RestRule(
        Rule rule, Then then, Urgency urgency, Predicate<Vitals> broken, Function<Vitals, String> text, String says) {
    public enum Then {
        HOLD,
        /** Light work only, no resistance, and the doctor is told. */
        LIGHT_ONLY
    }

    /** From here on very high pressure is a red flag, whichever list a practice holds by. */
    private static final RestSet.Line SEVERE = RestSet.Line.from(180, 110);

    private static final RestSet.Line RAISED = RestSet.Line.from(160, 90);
    private static final RestSet.Line RESISTANCE = RestSet.Line.over(160, 100);
    private static final String HEART = "Australian heart-failure exercise guidance";
    private static final String OURS = "no primary source found";

    /** What holds under every list. Order matters: the urgent line on pressure comes first. */
    private static final List<RestRule> ALWAYS = List.of(
            hold("D8-REST-FELT", "ESC/ESH; that unknown counts as felt is ours", FROM_MEMORY)
                    .at(EMERGENCY)
                    .when(v -> severe(v) && felt(v), v -> pressure(v) + " It is very high, and felt or not known.")
                    .says("180/110 mmHg or more, felt or not known: an emergency."),
            hold("D8-REST", "ESC/ESH", FROM_MEMORY)
                    .at(SAME_DAY)
                    .when(v -> severe(v) && !felt(v), Reading::pressure)
                    .says("180/110 mmHg or more and not felt: a doctor the same day."),
            hold("PULSE-120", HEART + "; ATS 2002, Am J Respir Crit Care Med 166:111-117", SEEN)
                    .at(SAME_DAY)
                    .when(v -> over(v.restingPulse(), 120), v -> pulse(v, "over 120"))
                    .says("Resting pulse over 120: hold, a doctor the same day."),
            hold("SPO2", OURS, DESIGN_CHOICE)
                    .at(SAME_DAY)
                    .when(v -> under(v.oxygen(), 90), v -> "Oxygen " + v.oxygen() + " %, under 90 %.")
                    .says("Oxygen at rest under 90 %: hold, a clinician the same day."),
            hold("FEVER", "BACR 2006, phase IV instructor manual", SEEN)
                    .at(ROUTINE)
                    .when(
                            v -> v.temperatureC() != null && v.temperatureC() > 38,
                            v -> "Temperature " + v.temperatureC() + " °C, over 38 °C.")
                    .says("Temperature over 38 °C or an illness with fever: hold."),
            hold("POSTURAL", "Freeman et al. 2011, Clin Auton Res 21:69-72; held only when felt: ours", SEEN)
                    .at(ROUTINE)
                    .when(v -> fallsOnStanding(v) && felt(v), Reading::posturalDrop)
                    .says(
                            "Pressure falls by 20 (upper) or 10 (lower) within 3 minutes of standing, and it is felt: hold."),
            hold("WEIGHT", HEART, SEEN)
                    .at(SAME_DAY)
                    .when(
                            v -> v.weightGainKg() != null && v.weightGainKg() >= 2,
                            v -> "Gained " + v.weightGainKg() + " kg in 1 to 3 days.")
                    .says("Heart failure and 2 kg or more gained in 1 to 3 days: hold, a doctor the same day."),
            hold("LOW_PRESSURE", "a UK list; under 90 is ours", DESIGN_CHOICE)
                    .at(SAME_DAY)
                    .when(
                            v -> under(v.systolic(), 90) && felt(v),
                            v -> pressure(v) + " It is low, and felt or not known.")
                    .says("Upper pressure under 90 mmHg, and it is felt: hold, a doctor the same day."),
            hold("SLOW_PULSE", OURS, DESIGN_CHOICE)
                    .at(SAME_DAY)
                    .when(
                            v -> under(v.restingPulse(), 40) || under(v.restingPulse(), 50) && felt(v),
                            v -> pulse(v, "slow"))
                    .says("Resting pulse under 40, or under 50 and felt: hold, a doctor the same day."),
            light("PRESSURE-RESISTANCE", "Williams et al. 2007, Circulation 116:572-584 (relative)", SEEN)
                    .at(ROUTINE)
                    .when(
                            v -> RESISTANCE.crossed(v.systolic(), v.diastolic()),
                            v -> pressure(v) + " Over 160/100 speaks against resistance work.")
                    .says("Over 160/100 mmHg: no resistance work (over 180/110 never)."),
            light("PRESSURE_RAISED", "the band under the instructors' hold line", DESIGN_CHOICE)
                    .at(ROUTINE)
                    .when(
                            v -> RAISED.crossed(v.systolic(), v.diastolic())
                                    && !RESISTANCE.crossed(v.systolic(), v.diastolic()),
                            v -> pressure(v) + " Raised: from 160/90 light work only, and the doctor is told.")
                    .says("From 160/90 mmHg: light work only, no resistance, and the doctor is told."));

    /** All lines under the list that a practice holds by. */
    public static List<RestRule> of(RestSet set) {
        return Stream.concat(chosen(set).stream(), ALWAYS.stream()).toList();
    }

    private static List<RestRule> chosen(RestSet set) {
        return List.of(
                hold(
                                set.rule().id() + "-PRESSURE",
                                set.rule().citation(),
                                set.rule().known())
                        .at(ROUTINE)
                        .when(v -> !severe(v) && set.pressure().crossed(v.systolic(), v.diastolic()), Reading::pressure)
                        .says("Pressure from %d upper or %d lower mmHg: hold."
                                .formatted(
                                        set.pressure().systolic(),
                                        set.pressure().diastolic())),
                hold(
                                set.rule().id() + "-PULSE",
                                set.rule().citation(),
                                set.rule().known())
                        .at(ROUTINE)
                        .when(
                                v -> over(v.restingPulse(), set.pulseOver()) && !over(v.restingPulse(), 120),
                                v -> pulse(v, "over " + set.pulseOver()))
                        .says("Resting pulse over " + set.pulseOver() + ": hold."));
    }

    static List<Statement> stated() {
        Stream<RestRule> sets = Stream.of(RestSet.values()).flatMap(set -> chosen(set).stream());
        return Stream.concat(
                        Stream.of(RestSet.values()).map(set -> Area.state(set.rule(), Area.AT_REST, set.words() + ".")),
                        Stream.concat(sets, ALWAYS.stream())
                                .map(each -> Area.state(each.rule, Area.AT_REST, each.says)))
                .toList();
    }

    public Finding finding(Vitals vitals) {
        return new Finding(rule, text.apply(vitals));
    }

    private static boolean severe(Vitals v) {
        return SEVERE.crossed(v.systolic(), v.diastolic());
    }

    private static RestRule hold(String id, String citation, Known known) {
        return new RestRule(new Rule(id, citation, known), HOLD, ROUTINE, null, null, "");
    }

    private static RestRule light(String id, String citation, Known known) {
        return new RestRule(new Rule(id, citation, known), LIGHT_ONLY, ROUTINE, null, null, "");
    }

    private RestRule at(Urgency how) {
        return new RestRule(rule, then, how, broken, text, says);
    }

    private RestRule when(Predicate<Vitals> line, Function<Vitals, String> told) {
        return new RestRule(rule, then, urgency, line, told, says);
    }

    private RestRule says(String words) {
        return new RestRule(rule, then, urgency, broken, text, words);
    }
}
