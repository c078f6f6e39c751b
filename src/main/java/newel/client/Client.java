package newel.client;

import java.util.List;
import java.util.Optional;
import newel.limit.Limit;
import newel.limit.Limitation;

/**
 * The person who exercises at home, as known today.
 *
 * @param look who is drawn in the client's pictures, an id; empty for different people
 */
public record Client(
        ClientId id,
        Profile profile,
        Home home,
        Wishes wishes,
        ReadinessAnswers readiness,
        FallsAnswers falls,
        Vitals vitals,
        List<Measured> measures,
        List<Limitation> limitations,
        String look) {

    public Client {
        measures = List.copyOf(measures);
        limitations = List.copyOf(limitations);
    }

    /** Nobody has chosen who is drawn. */
    public Client(
            ClientId id,
            Profile profile,
            Home home,
            Wishes wishes,
            ReadinessAnswers readiness,
            FallsAnswers falls,
            Vitals vitals,
            List<Measured> measures,
            List<Limitation> limitations) {
        this(id, profile, home, wishes, readiness, falls, vitals, measures, limitations, "");
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
