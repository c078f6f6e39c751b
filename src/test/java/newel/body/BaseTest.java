package newel.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BaseTest {
    private static final List<Vec> OBLONG =
            List.of(new Vec(0, 0, 0), new Vec(.3, 0, 0), new Vec(.3, 0, .2), new Vec(0, 0, .2));

    @Test
    void an_oblong_is_as_wide_as_its_short_side() {
        assertEquals(.2, Base.around(OBLONG).width(), 1e-12);
    }

    @Test
    void corners_that_differ_by_rounding_are_one_and_do_not_make_the_base_narrower() {
        List<Vec> points = new ArrayList<>(OBLONG);
        points.add(new Vec(.3 + 1e-15, 0, .2 - 3e-16));
        points.add(new Vec(-2e-16, 0, 1e-15));
        points.add(new Vec(1e-16, 0, .2 + 4e-16));

        Base base = Base.around(points);

        assertEquals(4, base.hull().size());
        assertEquals(.2, base.width(), 1e-12);
        assertEquals(.06, base.area(), 1e-12);
        assertEquals(.1, base.margin(new Vec(.15, 0, .1)), 1e-12);
    }
}
