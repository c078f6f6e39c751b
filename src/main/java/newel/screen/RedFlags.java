package newel.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import newel.client.Answer;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.source.Finding;
import newel.source.Statement;

/**
 * Which red flags are up and which questions about them have no answer; the highest level wins.
 *
 * @param together what signs say together that none says by itself; always an emergency
 */
record RedFlags(List<RedFlagRule> raised, List<RedFlagRule> unanswered, List<Finding> together) {

    /** @param felt whether the client feels what was measured at rest */
    static RedFlags of(ReadinessAnswers answers, Answer felt) {
        Set<RedFlag> yes = answers.redFlags().all(RedFlag.class, Answer.YES);
        Set<RedFlag> unknown = answers.redFlags().all(RedFlag.class, Answer.UNKNOWN);
        List<Finding> together = together(Combination.Told.of(answers, felt));
        return new RedFlags(rules(yes), rules(unknown), together);
    }

    private static List<Finding> together(Combination.Told told) {
        List<Finding> found = new ArrayList<>();
        for (Combination each : Combination.ALL) {
            if (!told.flag(each.becomes()) && each.holds().test(told)) {
                found.add(new Finding(each.rule(), each.says()));
            }
        }
        if (Combination.feltPressure(told)) {
            Statement felt = Combination.FELT_PRESSURE;
            found.add(new Finding(felt.rule(), felt.says()));
        }
        return List.copyOf(found);
    }

    private static List<RedFlagRule> rules(Set<RedFlag> flags) {
        return flags.stream().map(RedFlagRule::of).toList();
    }

    /** The level at which everything stops, if any. An unanswered emergency question counts as same day (design choice). */
    Optional<Urgency> stops() {
        if (raised(Urgency.EMERGENCY) || !together.isEmpty()) {
            return Optional.of(Urgency.EMERGENCY);
        }
        return raised(Urgency.SAME_DAY) || !unansweredEmergencies().isEmpty()
                ? Optional.of(Urgency.SAME_DAY)
                : Optional.empty();
    }

    List<Finding> stopReasons() {
        return Stream.of(
                        together.stream(),
                        raised.stream().map(RedFlagRule::raised),
                        unansweredEmergencies().stream().map(RedFlagRule::unanswered))
                .flatMap(each -> each)
                .toList();
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
