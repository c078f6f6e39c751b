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
        return measures.stream().filter(result -> result.measure() == measure).reduce(Client::newer);
    }

    /** The newest usual walking speed, whether it was given as a speed or as the time of a walk. */
    public Optional<Measured> walkingSpeed() {
        return measures.stream()
                .filter(result -> result.measure() == Measure.GAIT_SPEED
                        || result.measure().course() > 0)
                .reduce(Client::newer)
                .map(WalkingSpeed::of);
    }

    private static Measured newer(Measured one, Measured next) {
        return next.on().isBefore(one.on()) ? one : next;
    }
}
