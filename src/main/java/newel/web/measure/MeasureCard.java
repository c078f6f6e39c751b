package newel.web.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.assess.Course;
import newel.assess.CutOff;
import newel.assess.Guide;
import newel.assess.Plot;
import newel.assess.Plotting;
import newel.assess.Result;
import newel.assess.Verdict;
import newel.client.Client;
import newel.client.Measure;
import newel.source.Rule;
import newel.store.MeasuredStore;
import newel.web.form.Choice;

/**
 * One test with its newest result, what is said about it, and all its results.
 *
 * @param bands the headline, then another flag that starts the easy forms
 * @param change empty when there is nothing to compare with
 * @param legend what the letters in the plot mean
 */
public record MeasureCard(
        String id,
        String name,
        String value,
        String day,
        String how,
        List<Band> bands,
        List<Line> lines,
        String change,
        Plot plot,
        List<String> legend,
        List<Row> rows) {

    /** @param tone care, well or quiet; the words say the same */
    public record Band(String words, String tone) {}

    /** What one table says. */
    public record Line(String words, String figure, Rule rule, String known, String population, boolean flagged) {}

    /** One result of the course, with its key. */
    public record Row(String id, String day, String value, String how, String band) {}

    /** What is said here rests on these. */
    public List<Rule> rules() {
        return lines.stream().map(Line::rule).toList();
    }

    static Optional<MeasureCard> of(Client client, Course course, Measure measure, List<MeasuredStore.Kept> kept) {
        return course.newest(measure).map(newest -> card(client, course, newest, kept));
    }

    private static MeasureCard card(Client client, Course course, Result newest, List<MeasuredStore.Kept> kept) {
        Measure measure = newest.measured().measure();
        Guide judge = course.guides().of(newest.guide().readAs());
        List<Result> results = course.of(measure);
        return new MeasureCard(
                Choice.of(measure),
                measure.words(),
                DoneWords.value(newest),
                DoneWords.DAY.format(newest.measured().on()),
                DoneWords.how(newest.measured()),
                bands(newest),
                newest.verdicts().stream().map(each -> line(judge, each)).toList(),
                course.change(newest).map(ChangeWords::of).orElse(""),
                Plotting.of(client.profile(), course.guides(), results),
                legend(judge),
                rows(results, kept));
    }

    private static List<Band> bands(Result result) {
        Verdict headline = result.headline().orElse(null);
        List<Band> bands = new ArrayList<>();
        bands.add(new Band(band(result), tone(headline)));
        result.easyFlags().stream()
                .filter(flag -> headline == null || !headline.flagged())
                .findFirst()
                .ifPresent(flag -> bands.add(new Band(first(flag.says().words()), "care")));
        return List.copyOf(bands);
    }

    private static String band(Result result) {
        return first(result.headline().map(verdict -> verdict.says().words()).orElse("no published figure is held"));
    }

    private static String tone(Verdict headline) {
        if (headline == null || headline instanceof Verdict.NoNorm) {
            return "quiet";
        }
        return headline.flagged() ? "care" : "well";
    }

    static Line line(Guide judge, Verdict verdict) {
        return new Line(
                first(verdict.says().words()),
                new FigureWords(judge.measure()).of(verdict),
                verdict.rule(),
                known(verdict),
                verdict.table().population(),
                verdict.flagged());
    }

    private static String known(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Placed placed -> placed.row().known().words();
            case Verdict.Judged judged -> judged.row().known().words();
            default -> verdict.rule().known().words();
        };
    }

    private static List<String> legend(Guide judge) {
        List<String> legend = new ArrayList<>();
        legend.add(judge.lessIsBetter() ? "Lower is better." : "Higher is better.");
        judge.norms().stream()
                .findFirst()
                .ifPresent(norm -> legend.add("Shaded: usual range, %s (%s, %s)"
                        .formatted(
                                norm.spread(),
                                norm.rule().citation(),
                                norm.rule().known().words())));
        List<CutOff> drawn = Plotting.drawn(judge);
        for (int i = 0; i < drawn.size(); i++) {
            CutOff cutOff = drawn.get(i);
            legend.add("Line %s, flagged %s it: %s (%s, %s)"
                    .formatted(
                            (char) ('A' + i),
                            cutOff.compare().words(),
                            cutOff.flag().words(),
                            cutOff.rule().citation(),
                            cutOff.rule().known().words()));
        }
        return List.copyOf(legend);
    }

    /** Results and their keys stand in the same order: by day, then as entered. */
    private static List<Row> rows(List<Result> results, List<MeasuredStore.Kept> kept) {
        List<Row> rows = new ArrayList<>();
        for (int i = results.size() - 1; i >= 0; i--) {
            Result result = results.get(i);
            rows.add(new Row(
                    kept.get(i).id(),
                    DoneWords.DAY.format(result.measured().on()),
                    DoneWords.value(result),
                    DoneWords.how(result.measured()),
                    band(result)));
        }
        return List.copyOf(rows);
    }

    private static String first(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
