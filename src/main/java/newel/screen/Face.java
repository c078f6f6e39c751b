package newel.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What waits, in words for the face of a program. */
record Face(Screening screening) {
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (screening.permission() == Permission.NOTHING) {
            return stop();
        }
        readiness().ifPresent(lines::add);
        atRest().ifPresent(lines::add);
        screening.falls().level().balanceWaitsFor().ifPresent(lines::add);
        return List.copyOf(lines);
    }

    /** While nothing may be done, what would wait besides is of no use. */
    private List<String> stop() {
        return Stream.of(
                        screening.readiness() instanceof Readiness.Stop ? readiness() : Optional.<String>empty(),
                        screening.atRest() instanceof AtRest.Hold ? atRest() : Optional.<String>empty())
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<String> readiness() {
        return switch (screening.readiness()) {
            case Readiness.Clear clear -> Optional.empty();
            case Readiness.ClearWithLimits clear ->
                clear.row() == Row.B2V && clear.intensity() == Intensity.MODERATE
                        ? Optional.of("Vigorous work waits for a clinician.")
                        : Optional.empty();
            case Readiness.Wait wait ->
                Optional.of("Do not start yet. This waits for " + wait.who().words() + ".");
            case Readiness.Stop stop ->
                Optional.of("No exercise. " + stop.urgency().words() + ".");
        };
    }

    private Optional<String> atRest() {
        return switch (screening.atRest()) {
            case AtRest.Go go -> Optional.empty();
            case AtRest.NotMeasured missing ->
                Optional.of("Blood pressure or pulse is not measured: nothing harder than moderate.");
            case AtRest.LightOnly light ->
                Optional.of("Light work only and no resistance until a doctor has seen the blood pressure.");
            case AtRest.Hold hold ->
                Optional.of("No exercise today. " + hold.urgency().words() + ".");
        };
    }
}
