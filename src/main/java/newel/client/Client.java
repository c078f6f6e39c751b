package newel.client;

import java.util.List;
import java.util.Optional;
import newel.limit.Limit;
import newel.limit.Limitation;

/** The person who exercises at home, as known today. */
public record Client(
        ClientId id,
        Profile profile,
        Home home,
        Wishes wishes,
        ReadinessAnswers readiness,
        FallsAnswers falls,
        Vitals vitals,
        List<Measured> measures,
        List<Limitation> limitations) {

    public Client {
        measures = List.copyOf(measures);
        limitations = List.copyOf(limitations);
    }

    /** What the home rules out. */
    public List<Limit> homeLimits() {
        return home.limits(profile.statureCm());
    }

    /** The newest result of a test; of two on one day, the one entered last. */
    public Optional<Measured> newest(Measure measure) {
        return measures.stream()
                .filter(result -> result.measure() == measure)
                .reduce((one, next) -> next.on().isBefore(one.on()) ? one : next);
    }
}
