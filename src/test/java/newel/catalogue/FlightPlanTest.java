package newel.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import newel.Shipped;
import org.junit.jupiter.api.Test;

class FlightPlanTest {
    private static final long SEED = 20260303;

    @Test
    void one_way_up_is_a_straight_flight() {
        assertEquals("a0,0 b1,1 c2,2", drawn(movement("a", "b>a", "c>b")));
    }

    @Test
    void two_branches_are_two_flights_side_by_side() {
        assertEquals("a0,0 b1,1 d1,2 c2,2 e2,3", drawn(movement("a", "b>a", "c>b", "d>a", "e>d")));
    }

    @Test
    void a_branch_stands_to_the_right_of_the_flight_that_it_springs_from() {
        // a-b-c-d is the first flight, e-f springs from b, g from e
        assertEquals(
                "a0,0 b1,1 c2,2 e2,3 d3,3 f3,4 g3,5", drawn(movement("a", "b>a", "c>b", "d>c", "e>b", "f>e", "g>e")));
    }

    @Test
    void a_step_stands_above_the_highest_that_it_links_down_to() {
        // c links down to b and, past it, to a
        assertEquals("a0,0 b1,1 c2,2", drawn(movement("a", "b>a", "c>a,b")));
    }

    @Test
    void two_easiest_forms_both_stand_at_the_bottom() {
        assertEquals("a0,0 b0,1 c1,1", drawn(movement("a", "b", "c>a,b")));
    }

    @Test
    void in_random_movements_every_edge_leads_up_and_no_two_steps_share_a_place() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int round = 0; round < 500; round++) {
            check(random(random), "seed " + SEED + ", round " + round);
        }
    }

    @Test
    void the_shipped_movements_stand_so_too_and_stay_readable() {
        for (Movement movement : Shipped.CATALOGUE.movements()) {
            check(movement, movement.id());
            assertTrue(FlightPlan.of(movement).columns() <= 12, movement.id() + " is too wide");
        }
    }

    private static void check(Movement movement, String which) {
        FlightPlan plan = FlightPlan.of(movement);

        assertEquals(
                movement.variants().stream().map(Variant::id).collect(Collectors.toSet()),
                plan.places().stream().map(place -> place.variant().id()).collect(Collectors.toSet()),
                which);
        Set<String> taken = new HashSet<>();
        for (FlightPlan.Place place : plan.places()) {
            assertTrue(taken.add(place.level() + "," + place.column()), which + " shares a place");
            assertTrue(place.column() >= place.level() && place.column() < plan.columns(), which);
            assertTrue(place.level() < plan.levels(), which);
        }
        assertEquals(
                movement.variants().stream().mapToInt(v -> v.easier().size()).sum(),
                plan.edges().size(),
                which);
        plan.edges()
                .forEach(
                        edge -> assertTrue(edge.harder().level() > edge.easier().level(), which));
        assertEquals(
                levels(movement),
                plan.places().stream()
                        .collect(Collectors.toMap(place -> place.variant().id(), FlightPlan.Place::level)),
                which);
    }

    /** The longest way down from each, found by walking every way. */
    private static Map<String, Integer> levels(Movement movement) {
        Map<String, Variant> byId = new HashMap<>();
        movement.variants().forEach(variant -> byId.put(variant.id(), variant));
        return byId.keySet().stream().collect(Collectors.toMap(id -> id, id -> down(id, byId)));
    }

    private static int down(String id, Map<String, Variant> byId) {
        return byId.get(id).easier().stream()
                .mapToInt(link -> 1 + down(link.easier(), byId))
                .max()
                .orElse(0);
    }

    /** Up to 14 variants, written down in any order, each linked to up to three that come before it in another order. */
    private static Movement random(SplittableRandom random) {
        int size = random.nextInt(1, 15);
        List<String> written = new ArrayList<>();
        for (int at = 0; at < size; at++) {
            int most = Math.min(at, random.nextInt(0, 4));
            String links = IntStream.range(0, most)
                    .map(link -> random.nextInt(0, size))
                    .filter(easier -> easier < written.size())
                    .distinct()
                    .mapToObj(easier -> "v" + easier)
                    .collect(Collectors.joining(","));
            written.add("v" + at + (links.isEmpty() ? "" : ">" + links));
        }
        List<String> order = new ArrayList<>();
        while (!written.isEmpty()) {
            order.add(written.remove(random.nextInt(written.size())));
        }
        return movement(order.toArray(String[]::new));
    }

    /** Each variant as `id` or `id>easier,easier`. */
    private static Movement movement(String... written) {
        List<Variant> variants = new ArrayList<>();
        for (String each : written) {
            String[] parts = each.split(">");
            List<Link> links = parts.length < 2
                    ? List.of()
                    : List.of(parts[1].split(",")).stream()
                            .map(easier -> new Link(Axis.RANGE, easier, List.of()))
                            .toList();
            variants.add(variant(parts[0], links));
        }
        return new Movement("m", "M", "", Kind.STRENGTH, null, "a", List.of(), List.of(), "", variants);
    }

    private static Variant variant(String id, List<Link> links) {
        return new Variant(
                id,
                "m",
                id,
                null,
                Position.STANDING,
                Support.NONE,
                Set.of(),
                null,
                List.of(),
                false,
                Sides.TOGETHER,
                null,
                Trim.NONE,
                null,
                1,
                0,
                Grip.NONE,
                0,
                Set.of(),
                null,
                Breath.EVEN,
                links);
    }

    private static String drawn(Movement movement) {
        return FlightPlan.of(movement).places().stream()
                .map(place -> place.variant().id() + place.level() + "," + place.column())
                .collect(Collectors.joining(" "));
    }
}
