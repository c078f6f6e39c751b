package newel.referral;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import newel.assess.Course;
import newel.assess.Guides;
import newel.assess.Norm;
import newel.assess.Result;
import newel.assess.Verdict;
import newel.client.Aid;
import newel.client.Client;
import newel.client.Measure;
import newel.client.Vitals;

/** Figures with unit and day: signs at rest, and the newest result of each test with its norm and whose norm it is. */
final class MeasuredFacts {
    static List<Fact> of(Client client, Guides guides) {
        Course course = Course.of(guides, client);
        Stream<Fact> tests = Arrays.stream(Measure.values())
                .flatMap(measure -> course.newest(measure).stream())
                .map(MeasuredFacts::fact);
        return Stream.concat(atRest(client.vitals()), tests).toList();
    }

    private static Stream<Fact> atRest(Vitals v) {
        return Stream.of(
                        v.systolic() == null || v.diastolic() == null
                                ? null
                                : rest("pressure", "blood pressure %d/%d mmHg", v.systolic(), v.diastolic()),
                        v.restingPulse() == null ? null : rest("pulse", "pulse %d a minute", v.restingPulse()),
                        v.oxygen() == null ? null : rest("oxygen", "oxygen %d %%", v.oxygen()))
                .filter(Objects::nonNull);
    }

    private static Fact rest(String key, String format, Object... figures) {
        return new Fact("rest-" + key, Fact.Part.MEASURED, "At rest: " + format.formatted(figures) + ".");
    }

    private static Fact fact(Result each) {
        return new Fact(
                "measured-"
                        + each.measured()
                                .measure()
                                .name()
                                .toLowerCase(Locale.ROOT)
                                .replace('_', '-'),
                Fact.Part.MEASURED,
                "%s: %s, %s%s."
                        .formatted(
                                each.guide().measure().words(),
                                result(each),
                                Days.of(each.measured().on()),
                                norms(each)));
    }

    private static String result(Result each) {
        if (each.measured().unable()) {
            return "could not be done";
        }
        String sideWords = each.measured().done().sideWords();
        String side = sideWords.isEmpty() ? "" : ", " + sideWords;
        String arms = each.measured().armsUsed() ? ", the arms were used" : "";
        Aid aid = each.measured().done().aid();
        return each.measured().result() + side + arms + (aid == Aid.NONE ? "" : ", with a " + aid.words());
    }

    /** The first table that has a figure, and every one that the result falls short of. */
    private static String norms(Result each) {
        List<Verdict> said = Stream.concat(each.headline().stream(), each.flags().stream())
                .filter(verdict -> !(verdict instanceof Verdict.NoNorm))
                .distinct()
                .toList();
        return said.isEmpty()
                ? ""
                : ": " + said.stream().map(MeasuredFacts::norm).collect(Collectors.joining("; "));
    }

    private static String norm(Verdict verdict) {
        String source = verdict.rule().citation().split(";")[0];
        return "%s (%s%s)"
                .formatted(
                        verdict.says().words(),
                        figure(verdict).map(each -> each + "; ").orElse(""),
                        source);
    }

    private static Optional<String> figure(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Placed placed ->
                Optional.of("%s to %s, %s"
                        .formatted(
                                placed.row().worse().toPlainString(),
                                placed.row().better().toPlainString(),
                                ((Norm) placed.table()).spread()));
            case Verdict.Judged judged ->
                Optional.of(judged.table().compare().words() + " "
                        + judged.row().worse().toPlainString());
            case Verdict.Graded graded -> Optional.empty();
            case Verdict.NoNorm none -> Optional.empty();
        };
    }

    private MeasuredFacts() {}
}
