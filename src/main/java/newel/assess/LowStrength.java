package newel.assess;

import java.util.Optional;
import java.util.stream.Stream;
import newel.source.Known;
import newel.source.Rule;

/**
 * What grip, five chair stands and walking speed say together about strength, by the path of the European working group.
 *
 * <p>An instructor can come as far as "low strength"; what it is, a clinician says.
 *
 * @param lowPerformance the walk is slow as well; nothing is said of it while strength is unknown
 */
public record LowStrength(Outcome outcome, boolean lowPerformance) {
    public static final Rule RULE =
            new Rule("ewgsop2-path", "Cruz-Jentoft AJ et al. 2019, Age Ageing 48:16-31 (EWGSOP2)", Known.SEEN);

    public enum Outcome {
        INSUFFICIENT_DATA("Neither grip nor five chair stands were measured."),
        NO_LOW_STRENGTH("Neither grip nor chair stands are low."),
        PROBABLE_SARCOPENIA("Grip or chair stands are low. This is enough to begin strength work and to ask a doctor.");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    static LowStrength of(Optional<Result> grip, Optional<Result> stands, Optional<Result> walk) {
        if (grip.isEmpty() && stands.isEmpty()) {
            return new LowStrength(Outcome.INSUFFICIENT_DATA, false);
        }
        boolean low = flagged(grip, "ewgsop2-grip") || flagged(stands, "ewgsop2-chair-stand-5x");
        return new LowStrength(
                low ? Outcome.PROBABLE_SARCOPENIA : Outcome.NO_LOW_STRENGTH, flagged(walk, "ewgsop2-gait"));
    }

    private static boolean flagged(Optional<Result> result, String rule) {
        return result.stream()
                .flatMap(each -> each.verdicts().stream())
                .filter(verdict -> verdict.rule().id().equals(rule))
                .anyMatch(Verdict::flagged);
    }

    /** For another program: {@code PROBABLE_SARCOPENIA; LOW_PERFORMANCE}. */
    public String code() {
        return String.join(
                "; ",
                Stream.of(outcome.name(), lowPerformance ? "LOW_PERFORMANCE" : "")
                        .filter(part -> !part.isEmpty())
                        .toList());
    }
}
