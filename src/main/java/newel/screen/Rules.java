package newel.screen;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import newel.source.Statement;

/**
 * Every rule of screening in one list, each with its id, where it comes from, how well it is known and what it says. All of
 * them need a clinician's sign-off before they are used with people.
 */
public final class Rules {
    public static List<Statement> all() {
        return Stream.of(readiness(), redFlags(), onTheDay(), falls(), effort(), dose())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Statement> readiness() {
        return join(
                each(Definition.values(), Definition::stated),
                each(Row.values(), Row::stated),
                Cleared.stated(),
                ReadinessDecision.stated());
    }

    private static List<Statement> redFlags() {
        return join(
                RedFlagRule.ALL.stream().map(RedFlagRule::stated).toList(),
                Combination.ALL.stream().map(Combination::stated).toList(),
                List.of(Combination.FELT_PRESSURE, RedFlagRule.UNANSWERED));
    }

    private static List<Statement> onTheDay() {
        return join(
                RestRule.stated(),
                AtRest.stated(),
                each(GlucoseBand.values(), GlucoseBand::stated),
                SugarToday.stated(),
                DayCheck.stated(),
                each(StopSign.values(), StopSign::stated));
    }

    private static List<Statement> falls() {
        return join(FallsPath.stated(), FallsGait.stated(), FallsScore.stated(), FallsPlan.stated());
    }

    private static List<Statement> effort() {
        return join(
                each(MaxPulse.values(), MaxPulse::stated), PulseTarget.stated(), each(Effort.values(), Effort::stated));
    }

    private static List<Statement> dose() {
        return join(WeekCheck.stated(), LoadRise.stated(), PainModel.stated());
    }

    private static <T> List<Statement> each(T[] all, java.util.function.Function<T, Statement> stated) {
        return Arrays.stream(all).map(stated).toList();
    }

    @SafeVarargs
    private static List<Statement> join(List<Statement>... lists) {
        return Stream.of(lists).flatMap(List::stream).toList();
    }

    private Rules() {}
}
