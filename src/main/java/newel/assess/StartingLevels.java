package newel.assess;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import newel.catalogue.Purpose;
import newel.catalogue.Region;
import newel.client.Client;
import newel.client.Measure;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;

/**
 * Where to begin for each purpose and each region to be kept moving, as far as the newest results say so. What nothing was
 * measured for is absent: then experience alone decides.
 *
 * <p>The rule (design choice): a result below the usual range, or beyond a cut-off that is marked so in its file, starts
 * the easy forms. A result above the usual range with nothing flagged starts one step further; balance never does, because
 * passing a balance test does not rule out a fall. Anything else starts the usual forms. Of several results for one purpose
 * the lowest decides. A result older than half a year may lower a start and never raises it.
 */
public record StartingLevels(Map<Purpose, StartingLevel> byPurpose, Map<Region, StartingLevel> byRegion) {
    public static final Rule RULE = new Rule(
            "starting-level",
            "below the usual range or at risk: easy; within: usual; above and nothing flagged: further, but never for"
                    + " balance and never from a result older than 26 weeks; the lowest decides",
            Known.DESIGN_CHOICE);

    private static final int WEEKS_FRESH = 26;

    /** What one result says. */
    private record Said(Start start, Finding finding) {}

    public static StartingLevels of(Client client, LocalDate today) {
        return of(Course.of(Guides.shipped(), client), today);
    }

    public static StartingLevels of(Course course, LocalDate today) {
        Map<Purpose, StartingLevel> byPurpose = new EnumMap<>(Purpose.class);
        Map<Region, StartingLevel> byRegion = new EnumMap<>(Region.class);
        for (Purpose purpose : Purpose.values()) {
            level(course, today, Guide::purposes, purpose).ifPresent(level -> byPurpose.put(purpose, level));
        }
        for (Region region : Region.values()) {
            level(course, today, Guide::regions, region).ifPresent(level -> byRegion.put(region, level));
        }
        return new StartingLevels(Map.copyOf(byPurpose), Map.copyOf(byRegion));
    }

    private static <T> Optional<StartingLevel> level(
            Course course, LocalDate today, Function<Guide, Set<T>> about, T what) {
        List<Said> said = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            course.newest(measure)
                    .filter(result -> about.apply(result.guide()).contains(what))
                    .flatMap(result -> said(result, today, what != Purpose.BALANCE))
                    .ifPresent(said::add);
        }
        return said.stream()
                .map(Said::start)
                .min(Enum::compareTo)
                .map(lowest -> new StartingLevel(
                        lowest,
                        said.stream()
                                .filter(each -> each.start() == lowest)
                                .map(Said::finding)
                                .toList()));
    }

    private static Optional<Said> said(Result result, LocalDate today, boolean mayGoFurther) {
        Optional<Verdict> easy = Assessing.easy(result).findFirst();
        if (easy.isPresent()) {
            return Optional.of(new Said(Start.EASY, finding(result, easy.get())));
        }
        return result.headline()
                .filter(verdict -> !(verdict instanceof Verdict.NoNorm))
                .map(verdict -> new Said(
                        mayGoFurther && above(verdict) && !result.flagged() && fresh(result, today)
                                ? Start.FURTHER
                                : Start.USUAL,
                        finding(result, verdict)));
    }

    private static boolean above(Verdict verdict) {
        return verdict instanceof Verdict.Placed placed
                && placed.place() == Verdict.Place.ABOVE
                && placed.table().easy();
    }

    private static boolean fresh(Result result, LocalDate today) {
        return !result.measured().on().isBefore(today.minusWeeks(WEEKS_FRESH));
    }

    private static Finding finding(Result result, Verdict verdict) {
        return new Finding(
                verdict.rule(),
                "%s: %s."
                        .formatted(
                                result.measured().measure().words(),
                                verdict.says().words()));
    }

    public Optional<StartingLevel> of(Purpose purpose) {
        return Optional.ofNullable(byPurpose.get(purpose));
    }

    public Optional<StartingLevel> of(Region region) {
        return Optional.ofNullable(byRegion.get(region));
    }
}
