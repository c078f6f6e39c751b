package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import newel.catalogue.Kind;
import newel.catalogue.Support;
import newel.limit.Limit;
import org.junit.jupiter.api.Test;

/** Readiness, signs at rest and falls together decide what a program may do and what it says on its face. */
class ScreeningTest {
    private static final Readiness CLEAR = new Readiness.Clear(Row.B3, Intensity.MODERATE_OR_VIGOROUS);
    private static final Readiness WAIT =
            new Readiness.Wait(Row.A1, Who.CLINICIAN, Intensity.LIGHT_TO_MODERATE, List.of());
    private static final Readiness STOP = new Readiness.Stop(Row.B1, Urgency.SAME_DAY, List.of());
    private static final AtRest GO = new AtRest.Go();
    private static final AtRest LIGHT = new AtRest.LightOnly(List.of());
    private static final AtRest HOLD = new AtRest.Hold(Urgency.ROUTINE, List.of());

    @Test
    void who_is_clear_in_everything_may_start_and_nothing_stands_on_the_face() {
        Screening screening = screening(CLEAR, GO, FallsLevel.LOW);

        assertEquals(Permission.START, screening.permission());
        assertEquals(List.of(), screening.face());
        assertEquals(Map.of(), screening.withheld());
        assertEquals(
                List.of(new Limit.EffortAtMost(Intensity.MODERATE_OR_VIGOROUS.effortAtMost())), screening.limits());
    }

    @Test
    void who_waits_may_only_be_prepared_for() {
        Screening screening = screening(WAIT, GO, FallsLevel.LOW);

        assertEquals(Permission.PREPARE, screening.permission());
        assertEquals(List.of("Do not start yet. This waits for " + Who.CLINICIAN.words() + "."), screening.face());
    }

    @Test
    void the_sterner_of_readiness_and_signs_at_rest_decides() {
        for (Screening each : List.of(
                screening(CLEAR, HOLD, FallsLevel.LOW),
                screening(WAIT, HOLD, FallsLevel.LOW),
                screening(STOP, GO, FallsLevel.LOW))) {
            assertEquals(Permission.NOTHING, each.permission());
            assertEquals(0, each.effortAtMost());
            assertEquals(Kind.values().length, each.withheld().size());
        }
        assertEquals(
                List.of("No exercise. A doctor or an urgent clinic today."),
                screening(STOP, GO, FallsLevel.LOW).face());
        assertEquals(
                List.of("No exercise today. An appointment within two weeks."),
                screening(CLEAR, HOLD, FallsLevel.LOW).face());
    }

    @Test
    void raised_pressure_and_unknown_falls_each_keep_their_kind_of_work_waiting() {
        Screening screening = screening(CLEAR, LIGHT, FallsLevel.NOT_KNOWN);

        assertEquals(Permission.START, screening.permission());
        assertEquals(
                Map.of(
                        Kind.BALANCE, "Balance work at home waits until the questions on falls are answered.",
                        Kind.STRENGTH, "Strength work waits until a doctor has seen the blood pressure."),
                screening.withheld());
        assertEquals(
                List.of(
                        "Light work only and no resistance until a doctor has seen the blood pressure.",
                        "Balance work at home waits until the questions on falls are answered."),
                screening.face());
        assertEquals(
                List.of(
                        new Limit.EffortAtMost(Intensity.LIGHT.effortAtMost()),
                        new Limit.SupportNeeded(Support.TWO_HANDS)),
                screening.limits());
    }

    @Test
    void a_medium_risk_of_falls_asks_for_one_hand_and_holds_nothing_back() {
        Screening screening = screening(CLEAR, GO, FallsLevel.INTERMEDIATE);

        assertEquals(Map.of(), screening.withheld());
        assertEquals(
                new Limit.SupportNeeded(Support.ONE_HAND), screening.limits().getLast());
    }

    private static Screening screening(Readiness readiness, AtRest atRest, FallsLevel falls) {
        return new Screening(readiness, atRest, new FallsRisk(falls, List.of(), List.of()));
    }
}
