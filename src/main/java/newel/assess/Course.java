package newel.assess;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import newel.client.Client;
import newel.client.Measure;
import newel.client.Profile;

/**
 * All results of one client over time, each held against the norms for the age on its day.
 *
 * @param results the oldest first; of one day, in the order they were entered
 */
public record Course(Guides guides, List<Result> results) {

    public static Course of(Guides guides, Client client) {
        Assessing assessing = new Assessing(guides);
        Profile profile = client.profile();
        return new Course(
                guides,
                client.measures().stream()
                        .map(each -> assessing.of(each, profile.age(each.on()), profile.sex()))
                        .sorted(Comparator.comparing(result -> result.measured().on()))
                        .toList());
    }

    public List<Result> of(Measure measure) {
        return results.stream()
                .filter(result -> result.measured().measure() == measure)
                .toList();
    }

    /** The result of the newest day. A test with sides counts by the better side; of two others, the one entered last. */
    public Optional<Result> newest(Measure measure) {
        List<Result> all = of(measure);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        LocalDate day = all.getLast().measured().on();
        List<Result> ofDay =
                all.stream().filter(each -> each.measured().on().equals(day)).toList();
        return guides.of(measure).asks(Asked.SIDE)
                ? ofDay.stream().reduce((one, next) -> better(one, next) ? one : next)
                : Optional.of(ofDay.getLast());
    }

    private static boolean better(Result one, Result next) {
        if (one.measured().unable() != next.measured().unable()) {
            return next.measured().unable();
        }
        int more = one.score().compareTo(next.score());
        return one.guide().lessIsBetter() ? more < 0 : more > 0;
    }

    /** Since the last result of an earlier day on the same side and with the same aid; empty when there is none. */
    public Optional<Change> change(Result newest) {
        return of(newest.measured().measure()).stream()
                .filter(each -> each.measured().on().isBefore(newest.measured().on()))
                .filter(each -> alike(each, newest))
                .reduce((older, newer) -> newer)
                .map(before ->
                        Change.of(before, newest, guides.of(newest.guide().readAs())));
    }

    private static boolean alike(Result one, Result other) {
        return one.measured().done().side() == other.measured().done().side()
                && one.measured().done().aid() == other.measured().done().aid()
                && one.measured()
                        .part(newel.client.Part.COURSE)
                        .equals(other.measured().part(newel.client.Part.COURSE));
    }

    public LowStrength lowStrength() {
        return LowStrength.of(newest(Measure.GRIP), newest(Measure.CHAIR_STAND_5X), newestWalk());
    }

    private Optional<Result> newestWalk() {
        List<Result> walks = new ArrayList<>();
        results.stream()
                .filter(each -> each.guide().readAs() == Measure.GAIT_SPEED)
                .forEach(walks::add);
        return walks.isEmpty() ? Optional.empty() : Optional.of(walks.getLast());
    }
}
