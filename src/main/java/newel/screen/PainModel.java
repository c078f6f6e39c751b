package newel.screen;

import java.math.BigDecimal;
import java.util.List;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/**
 * The pain-monitoring model: what pain during, after and the next morning says.
 *
 * <p>Thomee R 1997, Phys Ther 77:1690-1703; Silbernagel KG et al. 2007, Am J Sports Med 35:897-906. The order of the tests
 * and what is done are ours.
 */
public record PainModel(PainZones zones) {
    private static final String PRIMARY =
            "Thomee 1997, Phys Ther 77:1690-1703; Silbernagel et al. 2007, Am J Sports Med 35:897-906";
    private static final Rule KIND = new Rule("PAIN-KIND", "made for tendons and the knee-cap", Known.DESIGN_CHOICE);
    private static final Rule ALARM = new Rule("PAIN-ALARM", "stop and let somebody look", Known.DESIGN_CHOICE);
    private static final Rule MOST = new Rule("PAIN-OVER-5", PRIMARY, Known.SEEN);
    private static final Rule MORNING =
            new Rule("PAIN-MORNING", PRIMARY + "; one point as the line is ours", Known.PARTLY);
    private static final Rule WEEK = new Rule("PAIN-WEEK", PRIMARY, Known.FROM_MEMORY);

    /** @param before the log of the session before, null when there is none */
    public PainOutcome judge(PainLog log, PainLog before) {
        return log.kind()
                .sign()
                .<PainOutcome>map(sign -> notForThisModel(log, sign))
                .orElseGet(() -> byZones(log, before));
    }

    private PainOutcome.NotForThisModel notForThisModel(PainLog log, RedFlagRule sign) {
        return new PainOutcome.NotForThisModel(
                new Finding(
                        KIND,
                        log.kind().words() + ": not measured by zones. Treated as: "
                                + sign.flag().words() + "."),
                sign.urgency());
    }

    private PainOutcome byZones(PainLog log, PainLog before) {
        if (log.alarming().yesOrUnknown() || log.atRest().yesOrUnknown()) {
            return new PainOutcome.StopAndRefer(new Finding(ALARM, alarm(log)));
        }
        if (log.notSettled() && before != null && before.notSettled()) {
            return new PainOutcome.StopAndRefer(
                    new Finding(MORNING, "Worse than a usual morning after two sessions running."));
        }
        if (over(log.most(), PainZones.MOST)) {
            return new PainOutcome.Reduce(new Finding(MOST, "Over 5 during or after the session."));
        }
        if (log.notSettled()) {
            return new PainOutcome.Reduce(new Finding(MORNING, "Not back to a usual morning by the next day."));
        }
        if (log.weekRises().yesOrUnknown()) {
            return new PainOutcome.Reduce(
                    new Finding(WEEK, "Pain or stiffness rises from week to week, or nobody knows."));
        }
        if (log.morning() == null) {
            return new PainOutcome.AskNextMorning(new Finding(MORNING, "Not over 5: ask again the next morning."));
        }
        return settled(log);
    }

    private PainOutcome settled(PainLog log) {
        return over(log.most(), zones.safeAtMost())
                ? new PainOutcome.Keep(
                        new Finding(zones.rule(), "Over the safe zone, and settled by the next morning."))
                : new PainOutcome.Progress(
                        new Finding(zones.rule(), "In the safe zone, and settled by the next morning."));
    }

    private static String alarm(PainLog log) {
        return log.alarming().yes() || log.atRest().yes()
                ? "Pain at night or over 5 at rest, new swelling, locking or giving way."
                : "Nobody knows of pain at night or at rest, swelling, locking or giving way.";
    }

    private static boolean over(BigDecimal pain, int bound) {
        return pain.compareTo(BigDecimal.valueOf(bound)) > 0;
    }

    static List<Statement> stated() {
        Area area = Area.PAIN;
        return List.of(
                Area.state(
                        KIND,
                        area,
                        "Never used for pain in chest or calf, spine pain with numbness or weakness, a bone that may be broken, or"
                                + " bone pain with cancer: these are red flags."),
                Area.state(
                        ALARM,
                        area,
                        "Pain at night, over 5 at rest, new swelling, locking or giving way: stop, let somebody look."),
                Area.state(MOST, area, "Over 5 during or after: one step easier."),
                Area.state(
                        MORNING,
                        area,
                        "One point or more over a usual morning: one step easier; after two sessions running: let somebody look."),
                Area.state(WEEK, area, "Pain or stiffness rises from week to week: one step easier."),
                Area.state(
                        PainZones.LOWER.rule(),
                        area,
                        PainZones.LOWER.words() + "; safe may go up a step, acceptable keeps the load."),
                Area.state(
                        PainZones.HIGHER.rule(),
                        area,
                        PainZones.HIGHER.words() + "; safe may go up a step, acceptable keeps the load."));
    }
}
