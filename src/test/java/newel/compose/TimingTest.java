package newel.compose;

import static newel.Shipped.CATALOGUE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import newel.Shipped;
import newel.catalogue.Dose;
import newel.limit.Share;
import org.junit.jupiter.api.Test;

class TimingTest {
    private static final Timing TIMING = new Timing(CATALOGUE);

    @Test
    void repetitions_take_their_tempo_and_sides_take_turns() {
        // Towel row, tempo 2-1-3: 8 × 6 s. Knee straightening on each side: 2 × 8 × its tempo and 5 s to change sides.
        assertEquals(48, TIMING.work(item("towel-row-seated-edge", new Dose(1, 8, 0))));
        double once = Shipped.variant("knee-straightening").tempo().seconds();
        assertEquals((int) Math.ceil(2 * 8 * once + 5), TIMING.work(item("knee-straightening", new Dose(1, 8, 0))));
    }

    @Test
    void a_round_gone_through_twice_is_explained_once() {
        // One pass of 48 s, read 12 s, rest 15 s. First: 12 + 1.25 × 48 + 15 = 87; again: 48 + 15 = 63.
        Item row = item("towel-row-seated-edge", new Dose(1, 8, 0));

        assertEquals(87 + 63, TIMING.block(new Block(BlockKind.ROUND, List.of(row), 2, 15)));
    }

    @Test
    void getting_up_and_fetching_a_towel_take_their_time() {
        // Standing march, then a seated towel row: 8 s to sit down, 15 s to fetch what is not there yet.
        Item march = item("march-counter", new Dose(1, 0, 30));
        Item row = item("towel-row-seated-edge", new Dose(1, 8, 0));
        int apart = TIMING.block(new Block(BlockKind.WARM_UP, List.of(march), 1, 0))
                + TIMING.block(new Block(BlockKind.WARM_UP, List.of(row), 1, 0));

        assertEquals(apart + 8 + 15, TIMING.block(new Block(BlockKind.WARM_UP, List.of(march, row), 1, 0)));
        Session session = new Session(List.of(new Block(BlockKind.WARM_UP, List.of(march, row), 1, 0)));
        assertEquals(Map.of("march-in-place", 0, "towel-row", 12 + 30), TIMING.clock(session));
    }

    @Test
    void between_two_rounds_there_is_water() {
        Block round = new Block(BlockKind.ROUND, List.of(item("towel-row-seated-edge", new Dose(1, 8, 0))), 1, 15);

        assertEquals(2 * TIMING.block(round) + 45, TIMING.session(new Session(List.of(round, round))));
    }

    private static Item item(String variant, Dose dose) {
        return new Item(
                Shipped.variant(variant).movement(), variant, Share.WHOLE, dose, How.KEPT, List.of(), List.of(), "");
    }
}
