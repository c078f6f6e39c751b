package newel.assess;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import newel.assess.Plot.Band;
import newel.assess.Plot.Cut;
import newel.assess.Plot.Dot;
import newel.assess.Plot.Tick;
import newel.client.Profile;
import newel.client.Quantity;
import newel.client.Unit;

/** Draws a {@link Plot}. Only the first range and the cut-offs that decide where to begin are drawn; the rest is told. */
public final class Plotting {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yy", Locale.ENGLISH);

    /** Room before the first and after the last result, in days, so that a single one has a place (design choice). */
    private static final int MARGIN_DAYS = 30;

    /** Between two figures that are written side by side. */
    private static final int LEAST_GAP = 34;

    private static final BigDecimal TENTH = new BigDecimal("0.1");

    private final Profile profile;
    private final Guide judge;
    private final List<Result> results;
    private final Days days;
    private final Heights heights;

    /** The one that the newest result was typed in. */
    private final Unit unit;

    private Plotting(Profile profile, Guide judge, List<Result> results) {
        this.profile = profile;
        this.judge = judge;
        this.results = results;
        LocalDate first = results.getFirst().measured().on();
        LocalDate last = results.getLast().measured().on();
        long margin = Math.max(MARGIN_DAYS, ChronoUnit.DAYS.between(first, last) / 12);
        this.days = new Days(first.minusDays(margin), last.plusDays(margin));
        this.unit = results.getLast().score().unit();
        this.heights = Heights.over(figures(), judge.decimals() == 0 ? BigDecimal.ONE : TENTH);
    }

    /** @param results of one test, the oldest first, at least one */
    public static Plot of(Profile profile, Guides guides, List<Result> results) {
        Guide judge = guides.of(results.getFirst().guide().readAs());
        return new Plotting(profile, judge, results).plot();
    }

    /** The cut-offs that are drawn, A first. */
    public static List<CutOff> drawn(Guide judge) {
        return judge.cutOffs().stream()
                .filter(each -> each.applies() && each.easy())
                .toList();
    }

    private Plot plot() {
        List<Dot> dots = dots();
        return new Plot(
                results.getFirst().measured().measure().words() + " over time",
                description(),
                bands(),
                cuts(),
                dots,
                way(dots),
                across(),
                heights.ticks(),
                unit.words());
    }

    private String description() {
        String told = results.stream()
                .map(each -> DAY.format(each.measured().on()) + ": " + told(each))
                .collect(Collectors.joining("; "));
        return told + ". " + (judge.lessIsBetter() ? "Lower is better." : "Higher is better.")
                + (judge.norms().isEmpty() ? "" : " The band is the usual range for the age on each day.");
    }

    private String told(Result result) {
        return result.measured().unable() ? "could not be done" : shown(result) + " " + unit.words();
    }

    private List<Double> figures() {
        List<Double> figures = new ArrayList<>();
        results.stream().filter(each -> !each.measured().unable()).forEach(each -> figures.add(value(each)));
        days.stretches(profile.birthDate()).forEach(stretch -> {
            range(stretch)
                    .ifPresent(row -> figures.addAll(
                            List.of(row.worse().doubleValue(), row.better().doubleValue())));
            drawn(judge).forEach(cut -> row(cut, stretch).ifPresent(row -> figures.add(figure(row.worse()))));
        });
        return figures;
    }

    private Optional<Row> range(Days.Stretch stretch) {
        return judge.norms().stream().findFirst().flatMap(norm -> row(norm, stretch));
    }

    private Optional<Row> row(Table table, Days.Stretch stretch) {
        return table.row(profile.age(stretch.from()), profile.sex());
    }

    private List<Band> bands() {
        return days.stretches(profile.birthDate()).stream()
                .flatMap(stretch -> range(stretch).map(row -> band(row, stretch)).stream())
                .toList();
    }

    private Band band(Row row, Days.Stretch stretch) {
        double a = heights.of(figure(row.worse()));
        double b = heights.of(figure(row.better()));
        double x = days.x(stretch.from());
        return new Band(x, Math.min(a, b), days.x(stretch.to()) - x, Math.abs(a - b));
    }

    private List<Cut> cuts() {
        List<Cut> cuts = new ArrayList<>();
        List<CutOff> drawn = drawn(judge);
        List<Days.Stretch> stretches = days.stretches(profile.birthDate());
        for (int i = 0; i < drawn.size(); i++) {
            String letter = String.valueOf((char) ('A' + i));
            for (Days.Stretch stretch : stretches) {
                boolean last = stretch == stretches.getLast();
                row(drawn.get(i), stretch)
                        .ifPresent(row -> cuts.add(new Cut(
                                letter,
                                days.x(stretch.from()),
                                days.x(stretch.to()),
                                heights.of(figure(row.worse())),
                                last)));
            }
        }
        return List.copyOf(cuts);
    }

    private List<Dot> dots() {
        List<Dot> dots = new ArrayList<>();
        for (Result each : results) {
            boolean unable = each.measured().unable();
            double x = days.x(each.measured().on());
            double y = unable ? (judge.lessIsBetter() ? Plot.TOP : Plot.BOTTOM) : heights.of(value(each));
            dots.add(new Dot(x, y, unable ? "could not" : shown(each), unable));
        }
        return unlabelled(dots);
    }

    /** The newest keeps its figure; an older one gives its up where they would touch. */
    private static List<Dot> unlabelled(List<Dot> dots) {
        List<Dot> kept = new ArrayList<>();
        double next = Double.MAX_VALUE;
        for (Dot dot : dots.reversed()) {
            boolean room = next - dot.x() >= LEAST_GAP;
            kept.addFirst(room ? dot : new Dot(dot.x(), dot.y(), "", dot.unable()));
            next = room ? dot.x() : next;
        }
        return List.copyOf(kept);
    }

    private static String way(List<Dot> dots) {
        return dots.stream()
                .filter(dot -> !dot.unable())
                .map(dot -> Plot.number(dot.x()) + "," + Plot.number(dot.y()))
                .collect(Collectors.joining(" "));
    }

    private List<Tick> across() {
        return Stream.of(results.getFirst(), results.getLast())
                .map(each -> each.measured().on())
                .distinct()
                .map(day -> new Tick(days.x(day), DAY.format(day)))
                .toList();
    }

    private double figure(BigDecimal published) {
        return new Quantity(published, judge.measure().unit()).in(unit).amount().doubleValue();
    }

    private double value(Result result) {
        return result.score().in(unit).amount().doubleValue();
    }

    private String shown(Result result) {
        return Scored.rounded(result.score().in(unit)).number();
    }
}
