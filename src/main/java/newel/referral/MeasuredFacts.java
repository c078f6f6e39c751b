package newel.referral;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import newel.client.Client;
import newel.client.Measure;
import newel.client.Measured;
import newel.client.Vitals;

/** Figures with their unit and day: signs at rest, and the newest result of each test. */
final class MeasuredFacts {
    static List<Fact> of(Client client) {
        List<Fact> rest = atRest(client.vitals());
        List<Fact> tests = Arrays.stream(Measure.values())
                .map(measure -> client.newest(measure).orElse(null))
                .filter(Objects::nonNull)
                .map(MeasuredFacts::fact)
                .toList();
        return java.util.stream.Stream.concat(rest.stream(), tests.stream()).toList();
    }

    private static List<Fact> atRest(Vitals v) {
        return java.util.stream.Stream.of(
                        v.systolic() == null || v.diastolic() == null
                                ? null
                                : rest("pressure", "blood pressure %d/%d mmHg", v.systolic(), v.diastolic()),
                        v.restingPulse() == null ? null : rest("pulse", "pulse %d a minute", v.restingPulse()),
                        v.oxygen() == null ? null : rest("oxygen", "oxygen %d %%", v.oxygen()))
                .filter(Objects::nonNull)
                .toList();
    }

    private static Fact rest(String key, String format, Object... figures) {
        return new Fact("rest-" + key, Fact.Part.MEASURED, "At rest: " + format.formatted(figures) + ".");
    }

    private static Fact fact(Measured each) {
        String value = BigDecimal.valueOf(each.value()).stripTrailingZeros().toPlainString();
        return new Fact(
                "measured-" + each.measure().name().toLowerCase(java.util.Locale.ROOT),
                Fact.Part.MEASURED,
                "%s: %s %s%s, %s."
                        .formatted(
                                each.measure().words(),
                                value,
                                each.measure().unit(),
                                each.armsUsed() ? ", with the arms" : "",
                                Days.of(each.on())));
    }

    private MeasuredFacts() {}
}
