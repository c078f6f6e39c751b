package newel.screen;

import java.math.BigDecimal;
import java.util.List;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * When to add load: two repetitions or more over the goal, in the last set, in two sessions running.
 *
 * <p>Baechle and Earle, Essentials of Strength Training and Conditioning. That pain keeps the load as it is, is ours.
 *
 * @param first repetitions of the last set in the session before the last one
 * @param second of the last session
 * @param running nothing of this movement was left out between the two
 * @param pain the worst of both sessions, 0 to 10
 */
public record LoadRise(int goal, int first, int second, boolean running, int pain) {
    static final Rule RULE =
            new Rule("TWO-FOR-TWO", "Baechle and Earle, Essentials of Strength Training and Conditioning", Known.SEEN);
    static final Rule SIZE = new Rule("RISE-SIZE", "NSCA: 2.5 to 10 %; ACSM: 2 to 10 %", Known.SEEN);
    static final Rule PAIN = new Rule("RISE-PAIN", "load rises only in the safe zone of pain", Known.DESIGN_CHOICE);

    private static final int OVER = 2;
    private static final BigDecimal LEAST = new BigDecimal("2");
    private static final BigDecimal MOST = new BigDecimal("10");

    public boolean due(PainZones zones) {
        return running && first >= goal + OVER && second >= goal + OVER && pain <= zones.safeAtMost();
    }

    /** The next load in kg, exact; the same load while no rise is due. */
    public BigDecimal next(BigDecimal loadKg, BigDecimal percent, PainZones zones) {
        if (percent.compareTo(LEAST) < 0 || percent.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("rise of " + percent + " %");
        }
        return due(zones) ? loadKg.add(loadKg.multiply(percent).movePointLeft(2)) : loadKg;
    }

    static List<Statement> stated() {
        Area area = Area.DOSE;
        return List.of(
                Area.state(
                        RULE,
                        area,
                        "2 repetitions or more over the goal in the last set, in 2 sessions running: add load."),
                Area.state(SIZE, area, "Add 2 to 10 %."),
                Area.state(PAIN, area, "No load is added while pain is over the safe zone."));
    }
}
