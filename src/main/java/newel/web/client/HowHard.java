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
 * @param noPulse why no target pulse is shown; empty when one is
 */
public record HowHard(List<Band> bands, List<Finding> noPulse) {
    /**
     * @param scale of effort, 0 sitting to 10 all that can be given
     * @param pulse beats a minute, empty when none is shown
     */
    public record Band(String words, String scale, String talk, String pulse) {}

    static HowHard of(Client client, Screening screening, LocalDate today) {
        int most = most(client, screening);
        if (most == 0) {
            return new HowHard(List.of(), List.of());
        }
        Effort hardest = Effort.ofScale(most);
        int age = client.profile().age(today);
        List<Band> bands = Stream.of(Effort.LIGHT, Effort.MODERATE, Effort.VIGOROUS)
                .filter(band -> band.compareTo(hardest) <= 0)
                .map(band -> band(band, most, PulseTarget.of(client, age, band, band)))
                .toList();
        return new HowHard(bands, noPulse(PulseTarget.of(client, age, Effort.LIGHT, hardest)));
    }

    /** The lower of what screening and what each limitation allows. */
    private static int most(Client client, Screening screening) {
        return client.limitations().stream()
                .flatMap(each -> each.limits().stream())
                .filter(Limit.EffortAtMost.class::isInstance)
                .mapToInt(limit -> ((Limit.EffortAtMost) limit).most())
                .reduce(screening.effortAtMost(), Math::min);
    }

    /** Of a band that a limit cuts short no pulse is shown: its upper end would be too hard. */
    private static Band band(Effort band, int most, PulseTarget target) {
        int to = Math.min(band.scaleTo(), most);
        String scale = to == band.scaleFrom() ? String.valueOf(to) : band.scaleFrom() + " to " + to;
        String pulse = to == band.scaleTo() && target instanceof PulseTarget.Shown shown
                ? shown.from() + " to " + shown.to() + " beats a minute"
                : "";
        return new Band(band.words(), scale, band.talk(), pulse);
    }

    private static List<Finding> noPulse(PulseTarget target) {
        return target instanceof PulseTarget.NotShown not ? not.reasons() : List.of();
    }
}
