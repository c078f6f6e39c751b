package newel.web.intake;

import java.util.List;
import java.util.Optional;
import newel.screen.AtRest;
import newel.screen.FallsRisk;
import newel.screen.Readiness;
import newel.screen.Screening;
import newel.screen.Urgency;
import newel.source.Finding;
import newel.web.Practice;

/** An answer at intake that comes before the intake: an emergency, or something for a doctor today. */
public record UrgentPage(String base, String name, Urgency urgency, List<Finding> reasons) {

    /** Questions that are merely open do not interrupt; they are counted at their step. */
    static Optional<UrgentPage> of(String base, String name, ReadinessForm.Answered answered, Practice practice) {
        Screening screening = screening(answered, practice);
        boolean alarm = ReadinessForm.alarms(answered)
                || screening.atRest() instanceof AtRest.Hold hold && hold.urgency() != Urgency.ROUTINE;
        return screening
                .urgency()
                .filter(urgency -> alarm || urgency == Urgency.EMERGENCY)
                .map(urgency -> new UrgentPage(base, name, urgency, screening.stopping()));
    }

    private static Screening screening(ReadinessForm.Answered answered, Practice practice) {
        return new Screening(
                Readiness.of(answered.readiness(), answered.vitals().symptoms(), practice.today()),
                AtRest.of(answered.vitals(), practice.choices().restSet()),
                FallsRisk.of(answered.falls(), null, null, practice.choices().fallsSet()));
    }

    public boolean emergency() {
        return urgency == Urgency.EMERGENCY;
    }
}
