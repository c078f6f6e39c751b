package newel.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class BoundsTest {
    @Test
    void bounds_reach_to_the_outermost_spots() {
        Bounds bounds = Bounds.of(List.of(new Spot(1, 5, 0), new Spot(-2, 3, 9), new Spot(0, 8, 0)));

        assertEquals(new Bounds(-2, 3, 1, 8), bounds);
        assertEquals(new Bounds(-4, 1, 3, 10), bounds.grown(2));
        assertEquals(3, bounds.width());
        assertEquals(5, bounds.height());
    }

    @Test
    void nothing_added_to_bounds_leaves_them_as_they_are() {
        Bounds bounds = new Bounds(0, 0, 1, 1);

        assertEquals(bounds, bounds.with(Bounds.of(List.of())));
    }
}
