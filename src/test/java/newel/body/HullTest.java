package newel.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HullTest {
    private static final long SEED = 20261125;
    private static final Hull<Vec> FROM_ABOVE = new Hull<>(Vec::x, Vec::z, 0);

    @Test
    void a_square_with_points_inside_and_on_its_edges_has_four_corners() {
        List<Vec> points = List.of(at(0, 0), at(1, 0), at(1, 1), at(0, 1), at(.5, .5), at(.5, 0), at(1, .3), at(0, 0));

        assertEquals(List.of(at(0, 0), at(1, 0), at(1, 1), at(0, 1)), FROM_ABOVE.of(points));
    }

    @Test
    void fewer_than_three_points_are_their_own_hull() {
        assertEquals(List.of(), FROM_ABOVE.of(List.of()));
        assertEquals(List.of(at(0, 0), at(1, 2)), FROM_ABOVE.of(List.of(at(1, 2), at(0, 0))));
    }

    @Test
    void the_hull_has_the_corners_that_a_search_over_all_edges_finds() {
        Random random = new Random(SEED);
        for (int run = 0; run < 300; run++) {
            List<Vec> points = new ArrayList<>();
            for (int i = 0; i < 3 + run % 20; i++) {
                points.add(at(random.nextDouble(), random.nextDouble()));
            }
            assertEquals(naive(points), new HashSet<>(FROM_ABOVE.of(points)), "seed " + SEED + " run " + run);
        }
    }

    @Test
    void mixing_the_points_up_changes_nothing() {
        Random random = new Random(SEED);
        List<Vec> points = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            points.add(at(random.nextInt(6), random.nextInt(6)));
        }
        List<Vec> hull = FROM_ABOVE.of(points);

        Collections.shuffle(points, random);
        assertEquals(hull, FROM_ABOVE.of(points));
        assertEquals(hull, FROM_ABOVE.of(hull));
    }

    /** Both ends of every edge that has all other points on its left. */
    private static Set<Vec> naive(List<Vec> points) {
        Set<Vec> corners = new HashSet<>();
        for (Vec a : points) {
            for (Vec b : points) {
                if (a != b && points.stream().allMatch(c -> c == a || c == b || left(a, b, c) > 0)) {
                    corners.add(a);
                    corners.add(b);
                }
            }
        }
        return corners;
    }

    private static double left(Vec a, Vec b, Vec c) {
        return (b.x() - a.x()) * (c.z() - a.z()) - (b.z() - a.z()) * (c.x() - a.x());
    }

    private static Vec at(double x, double z) {
        return new Vec(x, 0, z);
    }
}
