package newel.screen;

import java.util.List;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * A week beside the guideline for 65 and over: minutes, and days of strength and of balance work.
 *
 * <p>Bull FC et al. 2020, Br J Sports Med 54:1451-1462 (WHO).
 */
public record WeekCheck(int moderateMinutes, int vigorousMinutes, int strengthDays, int balanceDays) {
    private static final String WHO = "Bull et al. 2020, Br J Sports Med 54:1451-1462 (WHO)";
    static final Rule AEROBIC = new Rule("WEEK-MINUTES", WHO, Known.SEEN);
    static final Rule STRENGTH = new Rule("WEEK-STRENGTH", WHO, Known.SEEN);
    static final Rule BALANCE = new Rule("WEEK-BALANCE", WHO, Known.SEEN);

    private static final int MINUTES = 150;
    public static final int STRENGTH_DAYS = 2;
    public static final int BALANCE_DAYS = 3;

    /** One hard minute counts as two moderate ones. */
    public int moderateEquivalent() {
        return moderateMinutes + 2 * vigorousMinutes;
    }

    public boolean aerobicMet() {
        return moderateEquivalent() >= MINUTES;
    }

    public boolean strengthMet() {
        return strengthDays >= STRENGTH_DAYS;
    }

    public boolean balanceMet() {
        return balanceDays >= BALANCE_DAYS;
    }

    static List<Statement> stated() {
        Area area = Area.DOSE;
        return List.of(
                Area.state(
                        AEROBIC, area, "150 minutes a week of moderate work or more; one hard minute counts as two."),
                Area.state(STRENGTH, area, "Strength of all major groups on 2 days a week or more."),
                Area.state(BALANCE, area, "Balance together with strength on 3 days a week or more."),
                Area.state(
                        new Rule("WEEK-START-SMALL", WHO, Known.PARTLY),
                        area,
                        "Who cannot reach this does as much as they can; start small and build up."));
    }
}
