package newel.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import newel.body.Vec;
import org.junit.jupiter.api.Test;

class CatenaryTest {
    private static final long SEED = 7;

    @Test
    void a_towel_keeps_its_length_however_the_hands_are_held() {
        Random random = new Random(SEED);
        for (int run = 0; run < 200; run++) {
            Vec from = point(random);
            Vec to = point(random);
            double length = from.distance(to) * (1.05 + random.nextDouble());

            // A chain of 24 straight pieces is a little shorter than its curve.
            assertEquals(
                    length, length(Catenary.between(from, to, length)), .02 * length, "seed " + SEED + " run " + run);
        }
    }

    @Test
    void it_begins_and_ends_in_the_hands() {
        Vec from = new Vec(.3, .6, .2);
        Vec to = new Vec(.3, .5, -.1);
        List<Vec> curve = Catenary.between(from, to, .5);

        assertEquals(0, from.distance(curve.getFirst()), 1e-6);
        assertEquals(0, to.distance(curve.getLast()), 1e-6);
    }

    @Test
    void between_level_hands_it_hangs_lowest_in_the_middle() {
        List<Vec> curve = Catenary.between(new Vec(0, 1, .2), new Vec(0, 1, -.2), .6);

        double lowest = curve.stream().mapToDouble(Vec::y).min().orElseThrow();
        assertEquals(lowest, curve.get(curve.size() / 2).y(), 1e-9);
        assertTrue(lowest < .85);
    }

    @Test
    void pulled_to_its_length_it_is_straight() {
        Vec from = new Vec(0, 1, .2);
        Vec to = new Vec(0, 1, -.2);

        assertEquals(List.of(from, to), Catenary.between(from, to, .4));
    }

    private static Vec point(Random random) {
        return new Vec(random.nextDouble(), random.nextDouble(), random.nextDouble());
    }

    private static double length(List<Vec> curve) {
        return new Way(Piece.What.THING, curve).length();
    }
}
