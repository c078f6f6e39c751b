package newel.web.today;

import java.util.List;
import newel.client.Vitals;
import newel.screen.Checked;
import newel.screen.StopSign;
import newel.screen.Today;
import newel.source.Finding;
import newel.web.client.ClientHeader;
import newel.web.client.TodayBand;

/**
 * What a check said.
 *
 * @param emergency the number comes before anything else
 * @param stops what stops the session while it runs; empty when there is none
 */
public record OutcomePage(
        ClientHeader header,
        String base,
        String day,
        boolean emergency,
        TodayBand band,
        List<Finding> reasons,
        String measured,
        List<StopSign> stops) {

    static OutcomePage of(ClientHeader header, String base, String day, Checked checked, TodayBand band) {
        boolean goes = !(checked.outcome() instanceof Today.NotToday);
        return new OutcomePage(
                header,
                base,
                day,
                band.emergency(),
                band,
                checked.outcome().reasons(),
                measured(checked),
                goes ? List.of(StopSign.values()) : List.of());
    }

    private static String measured(Checked checked) {
        Vitals v = checked.answers().vitals();
        StringBuilder told = new StringBuilder();
        if (v.systolic() != null && v.diastolic() != null) {
            told.append("Blood pressure ")
                    .append(v.systolic())
                    .append('/')
                    .append(v.diastolic())
                    .append(" mmHg. ");
        }
        if (v.restingPulse() != null) {
            told.append("Pulse ").append(v.restingPulse()).append(". ");
        }
        if (v.oxygen() != null) {
            told.append("Oxygen ").append(v.oxygen()).append(" %. ");
        }
        if (checked.glucose() != null) {
            told.append("Blood sugar ").append(checked.glucose().told()).append(". ");
        }
        if (checked.answers().pain() != null) {
            told.append("Pain at rest ").append(checked.answers().pain()).append(" of 10.");
        }
        return told.toString().strip();
    }
}
