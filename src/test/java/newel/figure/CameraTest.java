package newel.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import newel.body.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CameraTest {
    @ParameterizedTest
    @CsvSource({"0, 1", "30, .8660254", "45, .7071068", "60, .5", "90, 0"})
    void a_segment_turned_out_of_the_picture_is_drawn_at_its_cosine(double turned, double drawn) {
        // Orthographic projection: L·cos β (reference 10, check 15)
        Spot spot = new Camera(turned, 0).see(new Vec(1, 0, 0));

        assertEquals(drawn, spot.x() / Camera.SCALE, 1e-6);
    }

    @Test
    void an_isometric_axis_is_drawn_at_the_root_of_two_thirds() {
        // Isometric scale .8165 for each axis: yaw 45, raised by atan(1/√2)
        Camera camera = new Camera(45, Math.toDegrees(Math.atan(1 / Math.sqrt(2))));
        Spot origin = camera.see(Vec.ZERO);
        for (Vec axis : new Vec[] {new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1)}) {
            assertEquals(Math.sqrt(2.0 / 3), camera.see(axis).distance(origin) / Camera.SCALE, 1e-6);
        }
    }

    @Test
    void from_the_front_the_right_hand_is_on_the_left_of_the_picture() {
        assertTrue(new Camera(-90, 0).see(new Vec(0, .5, .3)).x() < 0);
        assertTrue(new Camera(90, 0).see(new Vec(0, .5, .3)).x() > 0);
    }

    @Test
    void numbers_are_written_with_a_point_in_every_language() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals("1.5", Mark.number(1.5));
            assertEquals("1.0,2.0 3.0,4.5", Mark.pairs(java.util.List.of(new Spot(1, 2, 0), new Spot(3, 4.5, 0))));
        } finally {
            Locale.setDefault(before);
        }
    }
}
