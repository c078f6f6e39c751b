package newel.compose;

import static newel.Shipped.CATALOGUE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import newel.People;
import newel.Shipped;
import newel.catalogue.Movement;
import newel.catalogue.Purpose;
import newel.catalogue.Variant;
import newel.limit.Share;
import org.junit.jupiter.api.Test;

/** Each rule on what may stand where, at one option that it keeps out and one that it lets in. */
class PlaceRuleTest {
    private static final Context CONTEXT = Context.before(Wish.of(List.of(), 25, Levels.all(Level.BEGINNER)));

    @Test
    void each_part_holds_its_own_kind() {
        holds(PlaceRule.BELONGS, place(BlockKind.BALANCE, 0, 0), "stance-half-tandem-one", "chair-stand");
    }

    @Test
    void only_something_calm_ends_a_session() {
        Place last = new Place(BlockKind.COOL_DOWN, 1, 3, 3, true, 1, 0, 0, 15);
        holds(PlaceRule.BELONGS, last, "breathe-seated", "ham-seated");
        holds(PlaceRule.BELONGS, place(BlockKind.COOL_DOWN, 1, 1), "ham-seated", "breathe-seated");
    }

    @Test
    void a_warm_up_starts_easy_and_stays_light() {
        holds(PlaceRule.STARTS_EASY, place(BlockKind.WARM_UP, 0, 0), "roll-both-seated", "armswing-standing");
        holds(PlaceRule.WARMS_GENTLY, place(BlockKind.WARM_UP, 0, 1), "armswing-standing", "chair-stand");
    }

    @Test
    void a_cool_down_stays_light() {
        holds(PlaceRule.COOLS_GENTLY, place(BlockKind.COOL_DOWN, 1, 0), "round-arch-seated", "turn-arms-crossed");
    }

    @Test
    void harder_and_faster_things_are_not_first() {
        holds(PlaceRule.NOT_HARD_FIRST, place(BlockKind.ROUND, 1, 0), "chair-stand", "chair-stand-crossed");
    }

    @Test
    void pulse_bursts_end_a_round() {
        assertEquals(false, keeps(PlaceRule.BURSTS_LATE, place(BlockKind.ROUND, 1, 0), "march-seated-back"));
        assertEquals(true, keeps(PlaceRule.BURSTS_LATE, place(BlockKind.ROUND, 1, 2), "march-seated-back"));
    }

    @Test
    void upper_and_lower_body_take_turns() {
        holds(PlaceRule.TAKES_TURNS, place(BlockKind.ROUND, 1, 0), "chair-stand", "towel-row-seated-edge");
        holds(PlaceRule.TAKES_TURNS, place(BlockKind.ROUND, 1, 1), "towel-row-seated-edge", "chair-stand");
    }

    @Test
    void hard_balance_is_never_last_in_its_part() {
        assertEquals(false, keeps(PlaceRule.HARD_BALANCE_EARLY, place(BlockKind.BALANCE, 0, 1), hardBalance()));
        Place first = new Place(BlockKind.BALANCE, 0, 0, 2, false, 1, 0, 0, 15);
        assertEquals(true, keeps(PlaceRule.HARD_BALANCE_EARLY, first, hardBalance()));
    }

    private static String hardBalance() {
        return CATALOGUE.movement("stance-hold").orElseThrow().variants().stream()
                .filter(variant -> option(variant).hardBalance())
                .findFirst()
                .orElseThrow()
                .id();
    }

    @Test
    void a_group_that_rests_is_not_worked_hard() {
        Wish legsRest = CONTEXT.wish().withGroups(Set.of(), Set.of(Purpose.BACK));
        Context resting = Context.before(legsRest);

        assertEquals(
                false,
                PlaceRule.RESTED.keeps(resting, place(BlockKind.ROUND, 1, 0), option(Shipped.variant("chair-stand"))));
        assertEquals(
                true,
                PlaceRule.RESTED.keeps(CONTEXT, place(BlockKind.ROUND, 1, 0), option(Shipped.variant("chair-stand"))));
    }

    @Test
    void what_the_instructor_keeps_is_bound_to_its_part_alone() {
        Option hard = option(Shipped.variant("chair-stand-crossed"));
        Option kept = new Option(
                hard.movement(),
                hard.variant(),
                hard.item(),
                0,
                hard.lasts(),
                hard.parts(),
                true,
                0,
                hard.stance(),
                hard.work());

        assertEquals(false, PlaceRule.all(CONTEXT, place(BlockKind.ROUND, 1, 0), hard, false));
        assertEquals(true, PlaceRule.all(CONTEXT, place(BlockKind.ROUND, 1, 0), kept, false));
        assertEquals(false, PlaceRule.all(CONTEXT, place(BlockKind.BALANCE, 0, 0), kept, false));
    }

    private static void holds(PlaceRule rule, Place place, String in, String out) {
        assertEquals(true, keeps(rule, place, in), in);
        assertEquals(false, keeps(rule, place, out), out);
    }

    private static boolean keeps(PlaceRule rule, Place place, String variant) {
        return rule.keeps(CONTEXT, place, option(Shipped.variant(variant)));
    }

    private static Place place(BlockKind kind, int block, int index) {
        return new Place(kind, block, index, 1, false, 1, 0, 0, 15);
    }

    static Option option(Variant variant) {
        Movement movement = CATALOGUE.movementOf(variant);
        Item item = new Item(
                movement.id(),
                variant.id(),
                Share.WHOLE,
                variant.dose().beginner(),
                How.KEPT,
                List.of(),
                List.of(),
                "");
        return new Option(
                movement,
                variant,
                item,
                0,
                Shipped.suiting(People.fitAndBored()).lasts(variant, Share.WHOLE, item.dose()),
                Pool.parts(movement.kind()),
                false,
                CONTEXT.wish().serves(variant.purposes()),
                Stance.of(variant),
                Timing.work(variant, item.dose()));
    }
}
