package newel.web.client;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import newel.client.Client;
import newel.limit.Limit;
import newel.screen.Effort;
import newel.screen.PulseTarget;
import newel.screen.Screening;
import newel.source.Finding;

/**
 * How hard this client may work, in words that can be said to them.
 *
 * @param bands from the easiest to the hardest allowed; empty when nothing may be done
 * @param pulse the target in words, empty when none is shown
 * @param noPulse why none is shown
 */
public record HowHard(List<Band> bands, String pulse, List<Finding> noPulse) {
    /** @param scale of effort, 0 sitting to 10 all that can be given */
    public record Band(String words, String scale, String talk) {}

    static HowHard of(Client client, Screening screening, LocalDate today) {
        int most = most(client, screening);
        if (most == 0) {
            return new HowHard(List.of(), "", List.of());
        }
        Effort hardest = Effort.ofScale(most);
        List<Band> bands = Stream.of(Effort.LIGHT, Effort.MODERATE, Effort.VIGOROUS)
                .filter(band -> band.compareTo(hardest) <= 0)
                .map(band -> new Band(band.words(), band.scale(), band.talk()))
                .toList();
        return with(bands, PulseTarget.of(client, client.profile().age(today), Effort.LIGHT, hardest));
    }

    /** The lower of what screening and what each limitation allows. */
    private static int most(Client client, Screening screening) {
        return client.limitations().stream()
                .flatMap(each -> each.limits().stream())
                .filter(Limit.EffortAtMost.class::isInstance)
                .mapToInt(limit -> ((Limit.EffortAtMost) limit).most())
                .reduce(screening.effortAtMost(), Math::min);
    }

    private static HowHard with(List<Band> bands, PulseTarget target) {
        return switch (target) {
            case PulseTarget.Shown shown ->
                new HowHard(bands, "%d to %d beats a minute".formatted(shown.from(), shown.to()), List.of());
            case PulseTarget.NotShown not -> new HowHard(bands, "", not.reasons());
        };
    }
}
