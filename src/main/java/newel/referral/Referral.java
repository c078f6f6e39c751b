package newel.referral;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import newel.client.Client;
import newel.screen.AtRest;
import newel.screen.FallsLevel;
import newel.screen.Readiness;
import newel.screen.Screening;
import newel.screen.Urgency;
import newel.screen.Who;
import newel.source.Finding;

/** Decides whether something has to be handed over, and drafts the note. */
public final class Referral {
    public static Optional<Note> of(Client client, Screening screening, LocalDate today) {
        Optional<Urgency> urgency = urgency(screening);
        return urgency.map(how -> note(client, screening, how, today));
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
            case Readiness.ClearWithLimits clear -> Optional.empty();
            case Readiness.Wait wait -> wait.who() == Who.CLINICIAN ? Optional.of(Urgency.ROUTINE) : Optional.empty();
            case Readiness.Stop stop -> Optional.of(stop.urgency());
        };
    }

    private static Note note(Client client, Screening screening, Urgency urgency, LocalDate today) {
        return new Note(
                today,
                urgency,
                to(screening, urgency),
                client.profile().name(),
                client.profile().birthDate(),
                situation(client, today),
                Told.lines(client),
                findings(screening),
                question(screening),
                meanwhile(urgency, screening),
                "The client agrees that this note is sent:   yes / no      Date and signature:");
    }

    private static String to(Screening screening, Urgency urgency) {
        boolean falls = urgency == Urgency.ROUTINE
                && readiness(screening.readiness()).isEmpty()
                && !(screening.atRest() instanceof AtRest.LightOnly);
        return switch (urgency) {
            case EMERGENCY -> "Emergency service: call first, this note goes along";
            case SAME_DAY -> "Own doctor or urgent clinic, today";
            case ROUTINE -> falls ? "Falls service or own doctor" : "Own doctor";
        };
    }

    private static String situation(Client client, LocalDate today) {
        return "I am an exercise instructor. %s, %d, asked me for exercises at home; before they begin I ask for your advice."
                .formatted(
                        client.profile().name().isEmpty()
                                ? "The client"
                                : client.profile().name(),
                        client.profile().age(today));
    }

    private static List<Finding> findings(Screening screening) {
        Set<Finding> found = new LinkedHashSet<>(screening.readiness().reasons());
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
        boolean waits = readiness(screening.readiness()).isPresent() || screening.atRest() instanceof AtRest.Hold;
        if (urgency != Urgency.ROUTINE || waits) {
            return "No exercise from us until your answer is there.";
        }
        return screening.falls().level() == FallsLevel.HIGH
                ? "Seated work only, and standing with two hands on a support. No balance work at home."
                : "Light work only, without resistance.";
    }

    private Referral() {}
}
