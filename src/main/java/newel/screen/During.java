package newel.screen;

import java.util.EnumSet;
import java.util.Set;

/**
 * Measured while the work goes on; null is not measured. Pressures in mmHg, oxygen in percent, pulse in beats a minute.
 *
 * @param systolicBefore at the work before, which was easier
 * @param anginaPulse at which the client's heart pain is known to begin
 * @param walkTest a 6-minute walk, which has an oxygen line of its own
 */
public record During(
        Integer systolicBefore,
        Integer systolic,
        Integer diastolic,
        Integer oxygen,
        Integer pulse,
        Integer anginaPulse,
        boolean walkTest) {

    public Set<StopSign> stops() {
        Set<StopSign> stops = EnumSet.noneOf(StopSign.class);
        addIf(
                stops,
                StopSign.PRESSURE_FALLS,
                systolicBefore != null && systolic != null && systolicBefore - systolic >= 10);
        addIf(stops, StopSign.PRESSURE_HIGH, Reading.over(systolic, 250) || Reading.over(diastolic, 115));
        addIf(stops, StopSign.OXYGEN, !walkTest && Reading.under(oxygen, 88));
        addIf(stops, StopSign.OXYGEN_WALK, walkTest && Reading.under(oxygen, 80));
        addIf(stops, StopSign.NEAR_ANGINA, anginaPulse != null && Reading.from(pulse, anginaPulse - 10));
        return stops;
    }

    private static void addIf(Set<StopSign> stops, StopSign sign, boolean found) {
        if (found) {
            stops.add(sign);
        }
    }
}
