package newel.program;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import newel.catalogue.Catalogue;
import newel.client.Client;
import newel.client.Goal;
import newel.compose.Composed;
import newel.compose.Hand;
import newel.compose.Item;
import newel.compose.LeftOut;
import newel.compose.Levels;
import newel.compose.Session;
import newel.compose.Suiting;
import newel.compose.Week;
import newel.compose.WeekComposer;
import newel.compose.Wish;

/** Versions of a program that are composed: the first, and any that is composed again. */
public record Drafting(Catalogue catalogue, Client client, Suiting suiting, LocalDate day) {
    private static final int FIRST = 1;

    public Drafted first() {
        Brief brief = Brief.of(client.wishes().minutes());
        SortedMap<DayOfWeek, Hand> hands = new TreeMap<>();
        client.wishes().days().forEach(each -> hands.put(each, Hand.FREE));
        return drafted(FIRST, "First program after intake.", brief, hands, UnaryOperator.identity());
    }

    /**
     * The next version, composed from what is known today around what the instructor put there herself and today's limits
     * still allow.
     *
     * @param brief what she asks for from now on
     * @param reason why it is composed again
     */
    public Drafted again(Version before, Brief brief, String reason) {
        Proposal proposal = Proposal.of(catalogue, before, suiting);
        SortedMap<DayOfWeek, Hand> hands = new TreeMap<>();
        client.wishes()
                .days()
                .forEach(each -> hands.put(each, brief.hand().keeping(proposal.applied(session(before, each)))));
        Map<String, Integer> done =
                before.items().stream().collect(Collectors.toMap(Item::movement, item -> 1, Math::max));
        return drafted(
                before.number() + 1,
                reason,
                brief,
                hands,
                wish -> wish.withRecent(done).after(before.firstSession()));
    }

    /** On a day that is new she has kept what she keeps on the first day. */
    private static Session session(Version before, DayOfWeek day) {
        return before.sessions().getOrDefault(day, before.firstSession());
    }

    private Drafted drafted(
            int number, String reason, Brief brief, SortedMap<DayOfWeek, Hand> hands, UnaryOperator<Wish> after) {
        Beginning beginning = Beginning.of(client, day);
        Wish wish = after.apply(wish(client, beginning.levels()).withMinutes(brief.minutes()));
        Week week = new WeekComposer(catalogue).compose(wish, suiting, hands);
        if (week.made().isEmpty()) {
            return new Drafted.Refused(week.conflict());
        }
        String why = (reason + " " + beginning.why()).strip();
        Origin origin = Origin.of(brief, week);
        return new Drafted.Made(new Version(number, day, why, sessions(week), leftOut(week), origin), week);
    }

    private static SortedMap<DayOfWeek, Session> sessions(Week week) {
        SortedMap<DayOfWeek, Session> sessions = new TreeMap<>();
        week.made().forEach((each, made) -> sessions.put(each, made.session()));
        return sessions;
    }

    private static List<LeftOut> leftOut(Week week) {
        return week.made().values().stream()
                .map(Composed.Made::leftOut)
                .findFirst()
                .orElse(List.of());
    }

    public static Wish wish(Client client, Levels levels) {
        List<Goal> goals = client.wishes().goals();
        return Wish.of(
                goals.stream().map(Goal::purposes).toList(), client.wishes().minutes(), levels);
    }
}
