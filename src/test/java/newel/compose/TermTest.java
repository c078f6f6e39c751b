package newel.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import newel.Shipped;
import newel.catalogue.Purpose;
import newel.catalogue.Purposes;
import org.junit.jupiter.api.Test;

/** What counts for an item, term by term, with the weights as shipped. */
class TermTest {
    private static final Wish WISH = Wish.of(List.of(), 25, Levels.all(Level.BEGINNER));
    private static final Place ROUND = new Place(BlockKind.ROUND, 1, 0, 3, false, 2, 10, 1, 15);
    private static final Place WARM_UP = new Place(BlockKind.WARM_UP, 0, 1, 2, false, 1, 0, 0, 0);
    private static final Place COOL_DOWN = new Place(BlockKind.COOL_DOWN, 1, 0, 2, false, 1, 0, 0, 15);
    private static final Option CHAIR_STAND = PlaceRuleTest.option(Shipped.variant("chair-stand"));

    @Test
    void goals_count_in_full_when_a_movement_is_all_that_they_ask() {
        Purposes all = CHAIR_STAND.purposes();
        Wish wish = Wish.of(List.of(all), 25, Levels.all(Level.BEGINNER));
        Option serving = serving(wish.serves(all));

        assertEquals(Weight.GOALS.points(), Term.GOALS.points(Context.before(wish), ROUND, serving));
        assertEquals(2 * Weight.EARLY.points(), Term.EARLY.points(Context.before(wish), ROUND, serving));
    }

    private static Option serving(double serves) {
        Option o = CHAIR_STAND;
        return new Option(
                o.movement(), o.variant(), o.item(), 0.5, o.lasts(), o.parts(), false, serves, o.stance(), o.work());
    }

    @Test
    void the_wanted_form_counts_in_full_and_what_loses_half_counts_half() {
        assertEquals(Weight.CHALLENGE.points(), Term.CHALLENGE.points(Context.before(WISH), ROUND, CHAIR_STAND));
        assertEquals(Weight.CHALLENGE.points() / 2, Term.CHALLENGE.points(Context.before(WISH), ROUND, serving(0)));
    }

    @Test
    void each_main_group_counts_in_balance_and_rounds_alone() {
        assertEquals(2 * Weight.MAJOR.points(), Term.MAJOR.points(Context.before(WISH), ROUND, CHAIR_STAND));
        assertEquals(0, Term.MAJOR.points(Context.before(WISH), WARM_UP, CHAIR_STAND));
    }

    @Test
    void what_is_known_comes_back_until_it_came_back_many_times() {
        Context once = Context.before(WISH.withRecent(Map.of("chair-stand", 1)));
        Context often = Context.before(WISH.withRecent(Map.of("chair-stand", Term.MANY_TIMES)));

        assertEquals(Weight.RETURNS.points(), Term.RETURNS.points(once, ROUND, CHAIR_STAND));
        assertEquals(0, Term.LONG_ENOUGH.points(once, ROUND, CHAIR_STAND));
        assertEquals(Weight.LONG_ENOUGH.points(), Term.LONG_ENOUGH.points(often, ROUND, CHAIR_STAND));
    }

    @Test
    void more_of_something_counts_for_what_works_it() {
        Context legs = Context.before(WISH.withHand(Hand.FREE.wantingMoreOf(Set.of(Purpose.LEGS))));
        Context chest = Context.before(WISH.withHand(Hand.FREE.wantingMoreOf(Set.of(Purpose.CHEST))));

        assertEquals(Weight.MORE.points(), Term.MORE.points(legs, ROUND, CHAIR_STAND));
        assertEquals(0, Term.MORE.points(chest, ROUND, CHAIR_STAND));
    }

    @Test
    void a_warm_up_counts_what_the_rounds_will_load() {
        Context after = Context.after(WISH, List.of(CHAIR_STAND));
        Option pump = PlaceRuleTest.option(Shipped.variant("pump-seated-floor"));
        Option march = PlaceRuleTest.option(Shipped.variant("march-seated-back"));

        assertEquals(List.of(Purpose.LEGS, Purpose.HIPS), after.mostWorked());
        assertEquals(Weight.LOOSENS.points(), Term.LOOSENS.points(after, WARM_UP, pump));
        assertEquals(Weight.WARMS.points(), Term.WARMS.points(after, WARM_UP, march));
        assertEquals(0, Term.WARMS.points(after, WARM_UP, pump));
    }

    @Test
    void a_cool_down_counts_the_groups_that_were_worked() {
        Context after = Context.after(WISH, List.of(CHAIR_STAND));
        Option hamstrings = PlaceRuleTest.option(Shipped.variant("ham-seated"));

        assertEquals(2 * Weight.STRETCHES.points(), Term.STRETCHES.points(after, COOL_DOWN, hamstrings));
    }

    @Test
    void neighbours_lose_points_for_getting_up_and_for_the_same_muscles() {
        Stance stand = CHAIR_STAND.stance();
        Stance row =
                PlaceRuleTest.option(Shipped.variant("towel-row-seated-edge")).stance();

        assertEquals(-Weight.CHANGE_POSITION.points() - Weight.TAKE_UP.points(), stand.penalty(row, true));
        assertEquals(-2 * Weight.SAME_MUSCLES.points(), stand.penalty(stand, true));
        assertEquals(0, stand.penalty(stand, false));
    }

    @Test
    void every_weight_has_a_reason() {
        for (Weight weight : Weight.values()) {
            assertTrue(weight.why().length() > 20, weight.name());
        }
    }
}
