package newel.compose.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ConflictTest {
    private static final long SEED = 20261128;

    @Test
    void rules_that_hold_together_have_no_conflict() {
        assertEquals(List.of(), Conflict.smallest(List.of("a", "b"), rules -> true));
    }

    @Test
    void the_rules_that_clash_are_named_and_no_other() {
        List<String> clash = List.of("b", "e");
        List<String> named =
                Conflict.smallest(List.of("a", "b", "c", "d", "e", "f"), rules -> !rules.containsAll(clash));

        assertEquals(clash, named);
    }

    @Test
    void of_two_conflicts_one_is_named_whole_and_every_rule_in_it_is_needed() {
        for (int i = 0; i < 500; i++) {
            Random random = new Random(SEED + i);
            List<Integer> rules = new ArrayList<>();
            for (int r = 0; r < 12; r++) {
                rules.add(r);
            }
            List<Integer> one = some(random);
            List<Integer> other = some(random);
            List<Integer> named = Conflict.smallest(rules, set -> !set.containsAll(one) && !set.containsAll(other));

            assertTrue(named.containsAll(one) || named.containsAll(other), "seed " + (SEED + i) + " " + named);
            for (Integer needed : named) {
                List<Integer> without = new ArrayList<>(named);
                without.remove(needed);
                assertFalse(without.containsAll(one) || without.containsAll(other), "seed " + (SEED + i));
            }
        }
    }

    private static List<Integer> some(Random random) {
        return Arrays.stream(
                        random.ints(1 + random.nextInt(4), 0, 12).distinct().toArray())
                .boxed()
                .toList();
    }
}
