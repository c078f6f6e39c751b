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
        // One pass of 48 s, rest 15 s. First 1.25 × 48 + 15 = 75; 15 s between passes; again 48, rounded up to 50, + 15
        // = 65.
        Item row = item("towel-row-seated-edge", new Dose(1, 8, 0));

        assertEquals(60 + 15 + 50, TIMING.block(new Block(BlockKind.ROUND, List.of(row), 2, 15)));
        assertEquals(
                2 * 60 + 15 + 15 + 2 * 50 + 15, TIMING.block(new Block(BlockKind.ROUND, List.of(row, row), 2, 15)));
    }

    @Test
    void getting_up_and_fetching_a_towel_take_their_time() {
        // Standing march, then a seated towel row: 10 s to sit down, 15 s to leave the counter, 5 s to take it up.
        Item march = item("march-counter", new Dose(1, 0, 30));
        Item row = item("towel-row-seated-edge", new Dose(1, 8, 0));
        int apart = TIMING.block(new Block(BlockKind.WARM_UP, List.of(march), 1, 0))
                + TIMING.block(new Block(BlockKind.WARM_UP, List.of(row), 1, 0));

        assertEquals(apart + 10 + 15 + 5, TIMING.block(new Block(BlockKind.WARM_UP, List.of(march, row), 1, 0)));
        Session session = new Session(List.of(new Block(BlockKind.WARM_UP, List.of(march, row), 1, 0)));
        assertEquals(Map.of("march-in-place", 0, "towel-row", 10 + 30 + 30), TIMING.clock(session));
    }

    @Test
    void between_two_rounds_there_is_water() {
        Block round = new Block(BlockKind.ROUND, List.of(item("towel-row-seated-edge", new Dose(1, 8, 0))), 1, 15);

        assertEquals(2 * TIMING.block(round) + 45, TIMING.session(new Session(List.of(round, round))));
    }

    /**
     * A plain beginners' session with chair and towel, led by voice: four warm-up moves of about 20 seconds, three rounds of
     * three or four gone through twice at eight repetitions, fifteen seconds or twelve alternating, two water breaks, five
     * stretches of which four are one side at a time, a last turn of the neck: about 28 minutes (common practice).
     */
    @Test
    void a_beginners_session_takes_what_it_takes_in_practice() {
        Dose eight = new Dose(1, 8, 0);
        Dose twelve = new Dose(1, 12, 0);
        Dose fifteen = new Dose(1, 0, 15);
        Dose twenty = new Dose(1, 0, 20);
        Dose stretch = new Dose(1, 1, 25);
        Session session = new Session(List.of(
                new Block(
                        BlockKind.WARM_UP,
                        List.of(
                                item("roll-both-seated", new Dose(1, 5, 0)),
                                item("march-seated-back-arms", twenty),
                                item("armswing-seated-long", twenty),
                                item("pump-seated-floor", new Dose(1, 8, 0))),
                        1,
                        0),
                round(
                        item("towel-row-seated-edge", eight),
                        item("steptouch-seated", twelve),
                        item("press-seated-edge", eight),
                        item("march-seated-back", fifteen)),
                round(
                        item("pull-down-seated-edge", eight),
                        item("side-bend-seated-edge", twelve),
                        item("fly-seated-march", fifteen)),
                round(
                        item("chair-stand", eight),
                        item("palm-press-seated-edge", eight),
                        item("sidetap-seated-back", twelve),
                        item("pushpull-seated-march", fifteen)),
                new Block(
                        BlockKind.COOL_DOWN,
                        List.of(
                                item("ham-seated", stretch),
                                item("across-seated", stretch),
                                item("sidestretch-seated", stretch),
                                item("neckbend-seated", stretch),
                                item("chest-seated-behind", stretch),
                                item("neckturn-seated", new Dose(1, 4, 0))),
                        1,
                        0)));
        double minutes = TIMING.session(session) / 60.0;

        assertEquals(28, minutes, 2.8);
    }

    private static Block round(Item... items) {
        return new Block(BlockKind.ROUND, List.of(items), 2, 10);
    }

    private static Item item(String variant, Dose dose) {
        return new Item(
                Shipped.variant(variant).movement(), variant, Share.WHOLE, dose, How.KEPT, List.of(), List.of(), "");
    }
}
