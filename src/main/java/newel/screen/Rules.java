package newel.screen;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Every rule of screening in one list, each with its id, where it comes from, how well it is known and what it says. All of
 * them need a clinician's sign-off before they are used with people.
 */
public final class Rules {
    public static List<Stated> all() {
        return Stream.of(readiness(), redFlags(), onTheDay(), falls(), effort(), dose())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Stated> readiness() {
        return join(
                each(Definition.values(), Definition::stated),
                each(Row.values(), Row::stated),
                Cleared.stated(),
                ReadinessDecision.stated());
    }

    private static List<Stated> redFlags() {
        return join(
                RedFlagRule.ALL.stream().map(RedFlagRule::stated).toList(),
                Combination.ALL.stream().map(Combination::stated).toList(),
                List.of(Combination.FELT_PRESSURE, RedFlagRule.UNANSWERED));
    }

    private static List<Stated> onTheDay() {
        return join(
                RestRule.stated(),
                AtRest.stated(),
                each(GlucoseBand.values(), GlucoseBand::stated),
                SugarToday.stated(),
                DayCheck.stated(),
                each(StopSign.values(), StopSign::stated));
    }

    private static List<Stated> falls() {
        return join(FallsPath.stated(), FallsGait.stated(), FallsScore.stated(), FallsPlan.stated());
    }

    private static List<Stated> effort() {
        return join(
                each(MaxPulse.values(), MaxPulse::stated), PulseTarget.stated(), each(Effort.values(), Effort::stated));
    }

    private static List<Stated> dose() {
        return join(WeekCheck.stated(), LoadRise.stated(), PainModel.stated());
    }

    private static <T> List<Stated> each(T[] all, java.util.function.Function<T, Stated> stated) {
        return Arrays.stream(all).map(stated).toList();
    }

    @SafeVarargs
    private static List<Stated> join(List<Stated>... lists) {
        return Stream.of(lists).flatMap(List::stream).toList();
    }

    private Rules() {}
}
