package newel.compose;

import static newel.Shipped.CATALOGUE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import newel.People;
import newel.Shipped;
import newel.catalogue.Dose;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.client.Client;
import newel.limit.Share;
import newel.program.Drafting;
import org.junit.jupiter.api.Test;

class HandTest {
    private static final Composer COMPOSER = new Composer(CATALOGUE);
    private static final Client PERSON = People.painfulShoulder();

    @Test
    void a_pinned_movement_is_in_it_and_the_others_are_chosen_around_it() {
        String pinned = absent(made(Hand.FREE));
        Composed.Made made = made(Hand.FREE.pinning(Set.of(pinned)));

        assertTrue(made.session().item(pinned).isPresent(), pinned);
        assertEquals(List.of(), made.givenUp());
        assertTrue(made.proof().optimal());
        sound(Hand.FREE.pinning(Set.of(pinned)), made);
    }

    /** A strength movement that fits and was not chosen. */
    private static String absent(Composed.Made made) {
        return List.of("chair-stand", "knee-straightening", "heel-raise", "towel-row").stream()
                .filter(movement -> made.session().item(movement).isEmpty())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_banned_movement_stays_out_and_nothing_better_was_lost_than_its_points() {
        Composed.Made free = made(Hand.FREE);
        String banned = free.session().blocks().stream()
                .filter(block -> block.kind() == BlockKind.ROUND)
                .findFirst()
                .orElseThrow()
                .items()
                .getFirst()
                .movement();
        Composed.Made made = made(Hand.FREE.banning(Set.of(banned)));

        assertTrue(made.session().item(banned).isEmpty());
        sound(Hand.FREE.banning(Set.of(banned)), made);
    }

    @Test
    void what_the_instructor_put_there_stays_exactly_so() {
        Item hers = new Item(
                "towel-row",
                "towel-row-seated-back",
                Share.WHOLE,
                new Dose(1, 5, 0),
                How.CHOSEN,
                List.of(),
                List.of(),
                "");
        Session session = new Session(List.of(new Block(BlockKind.ROUND, List.of(hers), 2, 10)));
        Composed.Made made = made(Hand.in(session));

        assertEquals(Optional.of(hers), made.session().item("towel-row"));
    }

    @Test
    void more_of_something_gives_at_least_two_movements_for_it() {
        Composed.Made made = made(Hand.FREE.wantingMoreOf(Set.of(Purpose.ARMS)));
        long arms = made.session()
                .items()
                .filter(item -> Shipped.variant(item.variant()).purposes().weight(Purpose.ARMS) >= 2)
                .count();

        assertTrue(arms >= 2, arms + " for the arms");
    }

    @Test
    void other_minutes_give_another_session_within_them() {
        Composed.Made longer = assertInstanceOf(
                Composed.Made.class, COMPOSER.compose(wish().withMinutes(40), Shipped.suiting(PERSON)));
        int seconds = new Timing(CATALOGUE).session(longer.session());

        assertTrue(seconds <= 2400 && seconds >= 2160, seconds + " s");
    }

    @Test
    void a_wish_that_cannot_be_is_given_up_and_told_with_what_stands_against_it() {
        Client person = People.cannotStand();
        Wish wish = Drafting.wish(person, Levels.all(Level.BEGINNER))
                .withMinutes(25)
                .withHand(Hand.FREE.pinning(Set.of("suitcase-carry")));
        Composed.Made made = assertInstanceOf(Composed.Made.class, COMPOSER.compose(wish, Shipped.suiting(person)));
        GivenUp given = made.givenUp().stream()
                .filter(each -> each.wish()
                        .contains(CATALOGUE
                                .movement("suitcase-carry")
                                .orElseThrow()
                                .name()))
                .findFirst()
                .orElseThrow();

        assertFalse(made.session().item("suitcase-carry").isPresent());
        assertEquals(
                List.of(
                        "Needs a counter and a bag; there are none at home.",
                        "Needs 2 metres of clear floor; there are 1.0 at home.",
                        given.wish()),
                given.conflict());
    }

    @Test
    void the_way_to_the_floor_is_never_composed_and_says_so() {
        String name = CATALOGUE.movement("floor-transfer").orElseThrow().name();

        assertEquals(
                List.of(new GivenUp(
                        name + " in it",
                        List.of("It is never composed: add it by hand where it is safe", name + " in it"))),
                made(Hand.FREE.pinning(Set.of("floor-transfer"))).givenUp());
    }

    @Test
    void as_much_as_may_be_asked_at_once_is_still_composed() {
        Hand hand = Hand.FREE
                .pinning(Set.of("chair-stand", "towel-row", "knee-straightening", "heel-raise", "march-in-place"))
                .wantingMoreOf(Set.of(Purpose.LEGS, Purpose.ARMS, Purpose.BALANCE));

        sound(hand, made(hand));
    }

    @Test
    void with_everything_left_out_nothing_can_be_made() {
        Set<String> all = CATALOGUE.movements().stream().map(Movement::id).collect(Collectors.toSet());

        assertInstanceOf(
                Composed.Refused.class,
                COMPOSER.compose(wish().withHand(Hand.FREE.banning(all)), Shipped.suiting(PERSON)));
    }

    @Test
    void pinned_and_banned_at_once_is_a_conflict_of_the_two() {
        String name = CATALOGUE.movement("chair-stand").orElseThrow().name();
        Hand hand = Hand.FREE.pinning(Set.of("chair-stand")).banning(Set.of("chair-stand"));

        assertEquals(
                List.of(new GivenUp(name + " in it", List.of("Without " + name, name + " in it"))),
                made(hand).givenUp());
    }

    @Test
    void the_same_wish_gives_the_same_session() {
        assertEquals(made(Hand.FREE), made(Hand.FREE));
    }

    @Test
    void what_was_done_many_times_makes_room() {
        Composed.Made before = made(Hand.FREE);
        String tired = before.why().stream()
                .filter(why -> !why.runnerUp().isEmpty() && why.behind() < 4)
                .map(Why::movement)
                .findFirst()
                .orElseThrow();
        Composed.Made made = assertInstanceOf(
                Composed.Made.class,
                COMPOSER.compose(wish().withRecent(Map.of(tired, Term.MANY_TIMES)), Shipped.suiting(PERSON)));
        int change = Weight.RETURNS.points() + Weight.LONG_ENOUGH.points();

        assertTrue(change < 0, "coming back many times weighs less than being new");
        assertTrue(made.proof().score() >= before.proof().score() + change, tired);
    }

    private static void sound(Hand hand, Composed.Made made) {
        assertEquals(List.of(), SessionRules.broken(wish().withHand(hand), Shipped.suiting(PERSON), made));
    }

    private static Wish wish() {
        return Drafting.wish(PERSON, Levels.all(Level.BEGINNER)).withMinutes(25);
    }

    private static Composed.Made made(Hand hand) {
        return assertInstanceOf(Composed.Made.class, COMPOSER.compose(wish().withHand(hand), Shipped.suiting(PERSON)));
    }
}
