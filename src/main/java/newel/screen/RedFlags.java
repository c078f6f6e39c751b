package newel.screen;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import newel.client.Answer;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Symptom;
import newel.source.Finding;

/** Which red flags are up and which questions about them have no answer; the highest level wins. */
record RedFlags(List<RedFlagRule> raised, List<RedFlagRule> unanswered) {
    /** Any of these beside one swollen leg points to a clot that may have moved to the lung (NHS on clots in a vein). */
    private static final Set<Symptom> WITH_SWOLLEN_LEG = EnumSet.of(
            Symptom.BREATHLESS_AT_REST, Symptom.BREATHLESS_LYING, Symptom.UNUSUAL_TIREDNESS, Symptom.CHEST_DISCOMFORT);

    static RedFlags of(ReadinessAnswers answers) {
        Set<RedFlag> yes = answers.redFlags().all(RedFlag.class, Answer.YES);
        if (clotOnLungSigns(answers, yes)) {
            yes.add(RedFlag.SUDDEN_BREATHLESSNESS);
        }
        Set<RedFlag> unknown = answers.redFlags().all(RedFlag.class, Answer.UNKNOWN);
        unknown.removeAll(yes);
        return new RedFlags(rules(yes), rules(unknown));
    }

    private static boolean clotOnLungSigns(ReadinessAnswers answers, Set<RedFlag> yes) {
        return yes.contains(RedFlag.ONE_LEG_SWELLING)
                && (yes.contains(RedFlag.NEW_BREATHLESSNESS)
                        || WITH_SWOLLEN_LEG.stream()
                                .anyMatch(sign -> answers.symptoms().to(sign).yes()));
    }

    private static List<RedFlagRule> rules(Set<RedFlag> flags) {
        return flags.stream().map(RedFlagRule::of).toList();
    }

    /** The level at which everything stops, if any. An unanswered emergency question counts as same day (design choice). */
    Optional<Urgency> stops() {
        if (raised(Urgency.EMERGENCY)) {
            return Optional.of(Urgency.EMERGENCY);
        }
        return raised(Urgency.SAME_DAY) || !unansweredEmergencies().isEmpty()
                ? Optional.of(Urgency.SAME_DAY)
                : Optional.empty();
    }

    List<Finding> stopReasons() {
        List<Finding> reasons =
                new ArrayList<>(raised.stream().map(RedFlagRule::raised).toList());
        unansweredEmergencies().forEach(rule -> reasons.add(rule.unanswered()));
        return List.copyOf(reasons);
    }

    /** Flags that do not stop everything, by whether exercise waits for them. */
    List<Finding> routine(RedFlagRule.Meanwhile meanwhile) {
        return raised.stream()
                .filter(rule -> rule.urgency() == Urgency.ROUTINE && rule.meanwhile() == meanwhile)
                .map(RedFlagRule::raised)
                .toList();
    }

    List<Finding> toAsk(RedFlagRule.Meanwhile meanwhile) {
        return unanswered.stream()
                .filter(rule -> rule.urgency() != Urgency.EMERGENCY && rule.meanwhile() == meanwhile)
                .map(RedFlagRule::unanswered)
                .toList();
    }

    private boolean raised(Urgency urgency) {
        return raised.stream().anyMatch(rule -> rule.urgency() == urgency);
    }

    private List<RedFlagRule> unansweredEmergencies() {
        return unanswered.stream()
                .filter(rule -> rule.urgency() == Urgency.EMERGENCY)
                .toList();
    }
}
