package newel.screen;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import newel.client.Measure;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * What a level of falls risk asks of the instructor next.
 *
 * @param measure tests to take, those already taken left out
 * @param refer falls are handed over to a falls service or the own doctor
 * @param lookAgain when to ask again
 */
public record FallsPlan(List<Finding> steps, Set<Measure> measure, boolean refer, String lookAgain) {
    private static final Rule WFG_LOW = new Rule("FALLS-LOW", FallsPath.WFG, Known.FROM_MEMORY);
    private static final Rule WFG_MIDDLE = new Rule("FALLS-INTERMEDIATE", FallsPath.WFG, Known.PARTLY);
    private static final Rule WFG_HIGH = new Rule("FALLS-HIGH", FallsPath.WFG, Known.PARTLY);
    private static final Rule AT_RISK = new Rule("FALLS-AT-RISK", "CDC STEADI", Known.PARTLY);
    private static final Rule HANDS =
            new Rule("FALLS-SUPPORT", "how much support goes with which level is ours", Known.DESIGN_CHOICE);

    private static final String LOW_SAYS =
            "Tell how falls are prevented; exercise of the general kind. Ask again in 12 months.";
    private static final String MIDDLE_SAYS =
            "Exercise for balance, walking and strength, 3 times a week or more, built up over 12 weeks and then kept up.";
    private static final String HIGH_SAYS =
            "Hand over for a full falls assessment before any balance work at home without somebody near.";
    private static final String AT_RISK_SAYS =
            "Take up-and-go, chair stand and standing balance; ask about medicine, the home, sight, feet and shoes,"
                    + " and pressure lying and standing.";

    private static final String YEAR = "in 12 months";
    private static final String SOON = "in 30 to 90 days";

    public static FallsPlan of(FallsRisk risk, Set<Measure> taken) {
        return switch (risk.level()) {
            case LOW ->
                risk.atRisk()
                        ? new FallsPlan(List.of(atRisk(), hands("one hand")), missing(taken), false, SOON)
                        : new FallsPlan(List.of(new Finding(WFG_LOW, LOW_SAYS)), Set.of(), false, YEAR);
            case INTERMEDIATE ->
                new FallsPlan(
                        List.of(new Finding(WFG_MIDDLE, MIDDLE_SAYS), atRisk(), hands("one hand")),
                        missing(taken),
                        false,
                        YEAR);
            case HIGH ->
                new FallsPlan(
                        List.of(new Finding(WFG_HIGH, HIGH_SAYS), hands("both hands")), missing(taken), true, SOON);
            case NOT_KNOWN ->
                new FallsPlan(
                        List.of(
                                new Finding(FallsPath.OPEN, "Ask the questions on falls that are still open."),
                                hands("both hands")),
                        missing(taken),
                        false,
                        "as soon as they are answered");
        };
    }

    private static Finding atRisk() {
        return new Finding(AT_RISK, AT_RISK_SAYS);
    }

    private static Finding hands(String how) {
        return new Finding(HANDS, "Until then everything done standing is done holding on with " + how + ".");
    }

    private static Set<Measure> missing(Set<Measure> taken) {
        Set<Measure> open = EnumSet.of(
                Measure.GAIT_SPEED, Measure.UP_AND_GO_3M, Measure.CHAIR_STAND_30S, Measure.FOUR_STAGE_BALANCE);
        open.removeAll(taken);
        return open;
    }

    static List<Statement> stated() {
        Area area = Area.FALLS;
        return List.of(
                Area.state(WFG_LOW, area, "Low: " + LOW_SAYS),
                Area.state(WFG_MIDDLE, area, "Intermediate: " + MIDDLE_SAYS + " Ask again in 12 months."),
                Area.state(WFG_HIGH, area, "High: " + HIGH_SAYS + " Look again in 30 to 90 days."),
                Area.state(AT_RISK, area, "At risk by the key questions or the questionnaire: " + AT_RISK_SAYS),
                Area.state(
                        HANDS,
                        area,
                        "High or not known: both hands, and no balance work; intermediate or at risk: one hand."));
    }
}
