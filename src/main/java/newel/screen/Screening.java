package newel.screen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import newel.catalogue.Kind;
import newel.catalogue.Support;
import newel.client.Client;
import newel.client.Measure;
import newel.limit.Limit;
import newel.source.Finding;

/** All that screening says about one client, and what follows from it for a program. */
public record Screening(Readiness readiness, AtRest atRest, FallsRisk falls) {
    /** Stands wherever a result of screening is shown. */
    public static final String STANDING =
            "These rules come from published guidance and have not been reviewed by a clinician. They screen and hand over;"
                    + " they do not diagnose.";

    public static Screening of(Client client) {
        return of(client, Choices.strict());
    }

    /** By what the practice has chosen where sources disagree. */
    public static Screening of(Client client, Choices choices) {
        return of(client, choices, LocalDate.MIN);
    }

    /** @param today a clearance older than twelve months on this day does not count; without a day none grows old */
    public static Screening of(Client client, Choices choices, LocalDate today) {
        return new Screening(
                Readiness.of(client.readiness(), client.vitals().symptoms(), today),
                AtRest.of(client.vitals(), choices.restSet()),
                FallsRisk.of(
                        client.falls(),
                        client.walkingSpeed().orElse(null),
                        client.newest(Measure.UP_AND_GO_3M).orElse(null),
                        choices.fallsSet()));
    }

    public Permission permission() {
        if (atRest instanceof AtRest.Hold) {
            return Permission.NOTHING;
        }
        return switch (readiness) {
            case Readiness.Clear clear -> Permission.START;
            case Readiness.ClearWithLimits clear -> Permission.START;
            case Readiness.Wait wait -> Permission.PREPARE;
            case Readiness.Stop stop -> Permission.NOTHING;
        };
    }

    /** How soon somebody else must look at what stops or waits; empty when nothing does. */
    public Optional<Urgency> urgency() {
        Optional<Urgency> held = atRest instanceof AtRest.Hold hold ? Optional.of(hold.urgency()) : Optional.empty();
        return Stream.of(readinessUrgency(), held).flatMap(Optional::stream).reduce(Urgency::higher);
    }

    /** Why everything stops, worst first; empty when nothing does. */
    public List<Finding> stopping() {
        List<Finding> stopping = new ArrayList<>();
        if (readiness instanceof Readiness.Stop stop) {
            stopping.addAll(stop.reasons());
        }
        if (atRest instanceof AtRest.Hold hold) {
            stopping.addAll(hold.reasons());
        }
        return List.copyOf(stopping);
    }

    private Optional<Urgency> readinessUrgency() {
        return switch (readiness) {
            case Readiness.Clear clear -> Optional.empty();
            case Readiness.ClearWithLimits clear -> Optional.empty();
            case Readiness.Wait wait -> wait.who() == Who.CLINICIAN ? Optional.of(Urgency.ROUTINE) : Optional.empty();
            case Readiness.Stop stop -> Optional.of(stop.urgency());
        };
    }

    /** Effort on the 0 to 10 scale; 0 when nothing may be done. */
    public int effortAtMost() {
        if (permission() == Permission.NOTHING) {
            return 0;
        }
        return Math.min(readinessEffort(), atRestEffort());
    }

    private int readinessEffort() {
        return switch (readiness) {
            case Readiness.Clear clear -> clear.intensity().effortAtMost();
            case Readiness.ClearWithLimits clear -> clear.intensity().effortAtMost();
            case Readiness.Wait wait -> wait.afterwards().effortAtMost();
            case Readiness.Stop stop -> 0;
        };
    }

    private int atRestEffort() {
        return switch (atRest) {
            case AtRest.Go go -> Intensity.MODERATE_OR_VIGOROUS.effortAtMost();
            case AtRest.NotMeasured missing -> Intensity.LIGHT_TO_MODERATE.effortAtMost();
            case AtRest.LightOnly light -> Intensity.LIGHT.effortAtMost();
            case AtRest.Hold hold -> 0;
        };
    }

    /** Kinds of work that stay out for now, each with what it waits for, as a sentence. */
    public Map<Kind, String> withheld() {
        Map<Kind, String> waits = new EnumMap<>(Kind.class);
        if (permission() == Permission.NOTHING) {
            List.of(Kind.values())
                    .forEach(kind -> waits.put(kind, "No exercise for now (readiness and signs at rest)."));
            return waits;
        }
        falls.level().balanceWaitsFor().ifPresent(why -> waits.put(Kind.BALANCE, why));
        if (atRest instanceof AtRest.LightOnly) {
            waits.put(Kind.STRENGTH, "Strength work waits until a doctor has seen the blood pressure.");
        }
        return waits;
    }

    /** What screening asks of every variant. How much support goes with which level is a design choice. */
    public List<Limit> limits() {
        List<Limit> limits = new ArrayList<>();
        limits.add(new Limit.EffortAtMost(effortAtMost()));
        if (falls.level().balanceWaits()) {
            limits.add(new Limit.SupportNeeded(Support.TWO_HANDS));
        } else if (falls.level() == FallsLevel.INTERMEDIATE || falls.atRisk()) {
            limits.add(new Limit.SupportNeeded(Support.ONE_HAND));
        }
        return List.copyOf(limits);
    }

    public List<Finding> reasons() {
        return Stream.of(
                        readiness.reasons(),
                        atRest.reasons(),
                        falls.reasons(),
                        falls.keyQuestions(),
                        falls.score().findings())
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    /** What a program and its papers say on their face; empty when nothing waits. */
    public List<String> face() {
        return new Face(this).lines();
    }
}
