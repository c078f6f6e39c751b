package newel.compose;

import static java.time.DayOfWeek.*;
import static newel.Shipped.CATALOGUE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import newel.People;
import newel.Shipped;
import newel.catalogue.Kind;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;
import newel.client.Client;
import newel.program.Beginning;
import newel.program.Drafting;
import org.junit.jupiter.api.Test;

class WeekComposerTest {
    private static final WeekComposer WEEKS = new WeekComposer(CATALOGUE);

    @Test
    void three_days_apart_reach_the_guideline_on_strength_and_balance() {
        Week week = week(People.painfulShoulder(), EnumSet.of(MONDAY, WEDNESDAY, FRIDAY));

        assertEquals(List.of(), week.reached().shortOf());
        assertEquals(3, week.reached().days(Purpose.BALANCE));
        week.reached().sets().forEach((group, on) -> assertTrue(on.size() >= 2, group + " on " + on));
    }

    @Test
    void one_day_alone_says_what_it_cannot_reach() {
        Week week = week(People.painfulShoulder(), EnumSet.of(TUESDAY));

        assertTrue(week.reached().shortOf().contains("Balance on 1 of at least 3 days, because there are only 1."));
    }

    @Test
    void a_group_that_was_worked_hard_rests_for_48_hours() {
        Set<DayOfWeek> days = EnumSet.of(MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY);
        Week week = week(People.fitAndBored(), days);
        int hard = 0;
        for (Purpose group : Purpose.values()) {
            List<DayOfWeek> on = new ArrayList<>();
            for (DayOfWeek day : days) {
                if (group.muscleGroup() && worksHard(week, day, group)) {
                    on.add(day);
                }
            }
            hard += on.size();
            assertTrue(Loads.rested(on), group + " hard on " + on);
        }
        assertTrue(hard > 0, "something is worked hard");
    }

    private static boolean worksHard(Week week, DayOfWeek day, Purpose group) {
        return week.days().get(day) instanceof Composed.Made made
                && made.session()
                        .items()
                        .map(item -> Shipped.variant(item.variant()))
                        .anyMatch(variant -> hard(variant) && variant.purposes().weight(group) == 3);
    }

    private static boolean hard(Variant variant) {
        return CATALOGUE.movementOf(variant).kind() == Kind.STRENGTH && variant.effort() >= 5;
    }

    @Test
    void most_items_return_and_a_few_change() {
        Week week = week(People.outOfBreath(), EnumSet.of(MONDAY, WEDNESDAY, FRIDAY));
        Set<String> first = movements(week, MONDAY);
        Set<String> returned = new HashSet<>(movements(week, WEDNESDAY));
        int all = returned.size();
        returned.retainAll(first);

        assertTrue(2 * returned.size() > all, returned.size() + " of " + all + " return");
        assertTrue(returned.size() < all, "something changes");
    }

    private static Set<String> movements(Week week, DayOfWeek day) {
        Composed.Made made = (Composed.Made) week.days().get(day);
        return new HashSet<>(made.session().items().map(Item::movement).toList());
    }

    @Test
    void every_session_of_a_week_keeps_every_rule() {
        for (Client person : People.all()) {
            Wish wish = Drafting.wish(person, Beginning.of(person, People.TODAY).levels());
            Suiting suiting = Shipped.suiting(person);
            WEEKS.compose(wish, suiting, free(person.wishes().days()))
                    .days()
                    .forEach((day, composed) -> assertEquals(
                            List.of(),
                            SessionRules.broken(wish, suiting, (Composed.Made) composed),
                            person.profile().name() + ", " + day));
        }
    }

    @Test
    void the_days_of_hard_work_are_as_many_as_rest_allows() {
        Loads loads = Loads.over(EnumSet.allOf(DayOfWeek.class));

        assertEquals(Set.of(MONDAY, WEDNESDAY, FRIDAY), loads.hard().get(Purpose.LEGS));
        assertEquals(3, loads.hard().get(Purpose.BACK).size());
        assertEquals(
                Set.of(MONDAY), Loads.over(EnumSet.of(MONDAY, TUESDAY)).hard().get(Purpose.LEGS));
        assertEquals(
                Set.of(TUESDAY), Loads.over(EnumSet.of(MONDAY, TUESDAY)).hard().get(Purpose.BACK));
    }

    @Test
    void activity_is_counted_against_the_guideline_and_is_less_than_all_moving() {
        Activity activity = week(People.fitAndBored(), EnumSet.of(MONDAY, WEDNESDAY, FRIDAY))
                .reached()
                .activity();

        assertEquals(150, activity.guidelineMinutes());
        assertTrue(activity.moderateMinutes() > 0 && activity.moderateMinutes() < activity.allMinutes());
    }

    private static Week week(Client person, Set<DayOfWeek> days) {
        return WEEKS.compose(
                Drafting.wish(person, Beginning.of(person, People.TODAY).levels()),
                Shipped.suiting(person),
                free(days));
    }

    private static SortedMap<DayOfWeek, Hand> free(Set<DayOfWeek> days) {
        SortedMap<DayOfWeek, Hand> hands = new TreeMap<>();
        days.forEach(day -> hands.put(day, Hand.FREE));
        return hands;
    }
}
