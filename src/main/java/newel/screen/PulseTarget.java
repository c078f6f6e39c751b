package newel.screen;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import newel.client.Answer;
import newel.client.Client;
import newel.client.PulseGuard;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** The pulse to work at, in whole beats a minute, or why none is shown. */
public sealed interface PulseTarget {
    Rule GUARD = new Rule("PULSE-GUARD", "where a target pulse misleads, effort and talk are used", Known.FROM_MEMORY);
    Rule RESERVE = new Rule(
            "PULSE-RESERVE",
            "Karvonen et al. 1957, Ann Med Exp Biol Fenn 35:307-315; Tanaka et al. 2001, J Am Coll Cardiol 37:153-156",
            Known.SEEN);

    record Shown(int from, int to, Rule rule) implements PulseTarget {}

    record NotShown(List<Finding> reasons) implements PulseTarget {}

    /** For the easiest to the hardest band that a client may work in. */
    static PulseTarget of(Client client, int age, Effort from, Effort to) {
        List<Finding> guards = guards(client);
        if (!guards.isEmpty()) {
            return new NotShown(guards);
        }
        BigDecimal highest = MaxPulse.TANAKA.at(age);
        int rest = client.vitals().restingPulse();
        return new Shown(reserve(highest, rest, from.reserveFrom()), reserve(highest, rest, to.reserveTo()), RESERVE);
    }

    /** Rest plus that share of what lies between rest and the highest pulse, which is not rounded before. */
    static int reserve(BigDecimal highest, int rest, int percent) {
        BigDecimal share = highest.subtract(BigDecimal.valueOf(rest)).multiply(hundredths(percent));
        return whole(share.add(BigDecimal.valueOf(rest)));
    }

    static int ofHighest(BigDecimal highest, int percent) {
        return whole(highest.multiply(hundredths(percent)));
    }

    private static BigDecimal hundredths(int percent) {
        return BigDecimal.valueOf(percent, 2);
    }

    private static int whole(BigDecimal beats) {
        return beats.setScale(0, RoundingMode.HALF_UP).intValueExact();
    }

    /** Anything but a clear no keeps the target away. */
    private static List<Finding> guards(Client client) {
        List<Finding> found = new ArrayList<>();
        guard(found, client.readiness().pulseLoweringMedicine(), "Medicine that slows the pulse");
        boolean pacemaker =
                client.limitations().stream().anyMatch(each -> each.preset().equals("new-pacemaker"));
        for (PulseGuard each : PulseGuard.values()) {
            boolean logged = each == PulseGuard.PACEMAKER && pacemaker;
            guard(found, logged ? Answer.YES : client.readiness().pulseGuards().to(each), each.words());
        }
        if (client.vitals().restingPulse() == null) {
            found.add(new Finding(RESERVE, "The resting pulse was not measured."));
        }
        return List.copyOf(found);
    }

    private static void guard(List<Finding> found, Answer answer, String words) {
        if (answer.yes()) {
            found.add(new Finding(GUARD, words + "."));
        } else if (answer.unknown()) {
            found.add(new Finding(GUARD, "Not answered yet: " + words + "."));
        }
    }

    static List<Statement> stated() {
        return List.of(
                Area.state(
                        RESERVE,
                        Area.EFFORT,
                        "Target = rest + share x (highest - rest), rounded to whole beats, half up; a measured highest pulse"
                                + " stands above any formula."),
                Area.state(
                        GUARD,
                        Area.EFFORT,
                        "No target pulse with medicine that slows the pulse, an uneven rhythm, a pacemaker, nerve damage"
                                + " that changes the pulse, or a changed dose; nor while one of them is not answered."));
    }
}
