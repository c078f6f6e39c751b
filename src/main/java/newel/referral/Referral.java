package newel.referral;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import newel.client.RedFlag;
import newel.screen.AtRest;
import newel.screen.FallsLevel;
import newel.screen.Permission;
import newel.screen.Readiness;
import newel.screen.RedFlagRule;
import newel.screen.Screening;
import newel.screen.Urgency;
import newel.screen.Who;
import newel.source.Finding;

/** Decides whether something has to be handed over, to whom and how soon. */
public final class Referral {
    public static Optional<Proposal> of(Screening screening) {
        return urgency(screening)
                .map(urgency -> new Proposal(
                        urgency,
                        to(screening, urgency),
                        reason(screening),
                        findings(screening),
                        question(screening),
                        meanwhile(urgency, screening)));
    }

    /** The most urgent of what readiness, the signs at rest and the falls check ask for. */
    private static Optional<Urgency> urgency(Screening screening) {
        List<Urgency> asked = new ArrayList<>();
        readiness(screening.readiness()).ifPresent(asked::add);
        if (screening.atRest() instanceof AtRest.Hold hold) {
            asked.add(hold.urgency());
        }
        if (screening.atRest() instanceof AtRest.LightOnly || screening.falls().level() == FallsLevel.HIGH) {
            asked.add(Urgency.ROUTINE);
        }
        return asked.stream().reduce(Urgency::higher);
    }

    private static Optional<Urgency> readiness(Readiness readiness) {
        return switch (readiness) {
            case Readiness.Clear clear -> Optional.empty();
            case Readiness.ClearWithLimits clear ->
                routineFlags(clear).isEmpty() ? Optional.empty() : Optional.of(Urgency.ROUTINE);
            case Readiness.Wait wait -> wait.who() == Who.CLINICIAN ? Optional.of(Urgency.ROUTINE) : Optional.empty();
            case Readiness.Stop stop -> Optional.of(stop.urgency());
        };
    }

    /** Signs that let exercise go on, and still ask for somebody to look. */
    private static List<RedFlagRule> routineFlags(Readiness readiness) {
        Set<String> found =
                readiness.reasons().stream().map(each -> each.rule().id()).collect(Collectors.toSet());
        return RedFlagRule.ALL.stream()
                .filter(each -> found.contains(each.rule().id()))
                .toList();
    }

    /** Falls alone go to the falls service, a weak or slow result to a physiotherapist (design choice); all else to the doctor. */
    private static Addressee to(Screening screening, Urgency urgency) {
        if (urgency == Urgency.EMERGENCY) {
            return Addressee.EMERGENCY_RECORD;
        }
        if (urgency == Urgency.SAME_DAY
                || !(screening.readiness() instanceof Readiness.Clear || onlyFlags(screening))) {
            return Addressee.OWN_DOCTOR;
        }
        if (screening.atRest() instanceof AtRest.Hold || screening.atRest() instanceof AtRest.LightOnly) {
            return Addressee.OWN_DOCTOR;
        }
        Set<RedFlag> flags = routineFlags(screening.readiness()).stream()
                .map(RedFlagRule::flag)
                .collect(Collectors.toSet());
        if (Set.of(RedFlag.REPEATED_FALLS).containsAll(flags)) {
            return Addressee.FALLS_SERVICE;
        }
        return flags.equals(Set.of(RedFlag.WEAK_OR_SLOW)) ? Addressee.PHYSIOTHERAPIST : Addressee.OWN_DOCTOR;
    }

    private static boolean onlyFlags(Screening screening) {
        return screening.readiness() instanceof Readiness.ClearWithLimits;
    }

    /** Why a note is written, without saying what was found: that is ticked one by one. */
    private static String reason(Screening screening) {
        if (readiness(screening.readiness()).isPresent()) {
            return "of what was answered when I asked about health before exercise";
        }
        return screening.falls().level() == FallsLevel.HIGH
                ? "of what was answered about falls"
                : "of figures that were measured at rest";
    }

    private static List<Finding> findings(Screening screening) {
        Set<Finding> found = new LinkedHashSet<>();
        if (readiness(screening.readiness()).isPresent()) {
            found.addAll(screening.readiness().reasons());
        }
        if (screening.atRest() instanceof AtRest.Hold || screening.atRest() instanceof AtRest.LightOnly) {
            found.addAll(screening.atRest().reasons());
        }
        if (screening.falls().level() == FallsLevel.HIGH) {
            found.addAll(screening.falls().reasons());
        }
        return List.copyOf(found);
    }

    private static String question(Screening screening) {
        if (readiness(screening.readiness()).isPresent()) {
            return "Is light to moderate exercise at home safe for this person now, and is there anything they should not do?";
        }
        return screening.falls().level() == FallsLevel.HIGH
                ? "Please assess the risk of falls. What may be done at home meanwhile?"
                : "Please look at the figures above. Up to which effort may this person exercise?";
    }

    private static String meanwhile(Urgency urgency, Screening screening) {
        if (urgency != Urgency.ROUTINE || screening.permission() != Permission.START) {
            return Draft.NOTHING;
        }
        return screening.falls().level() == FallsLevel.HIGH
                ? "Seated work only, and standing with two hands on a support. No balance work at home."
                : screening.atRest() instanceof AtRest.LightOnly
                        ? "Light work only, without resistance."
                        : "The program goes on, no harder than moderate.";
    }

    private Referral() {}
}
