package newel.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;
import newel.body.Fingers;
import newel.body.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FingerShapeTest {
    private static FingerShape shape(double curl, double thumbTo) {
        return new FingerShape(new Brush(new Camera(0, 0)), new Fingers(curl, thumbTo), Function.identity(), 1);
    }

    private static Vec tip(FingerShape shape, int finger) {
        return shape.finger(finger).getLast();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void the_thumb_meets_the_tip_of_the_finger_that_is_named(int finger) {
        FingerShape meeting = shape(0.15, finger);

        assertEquals(0, meeting.thumb().getLast().distance(tip(meeting, finger - 1)), 1e-12);
    }

    @Test
    void a_straight_finger_is_as_long_as_its_bones_and_a_fist_brings_every_tip_back_to_the_palm() {
        for (int finger = 0; finger < 4; finger++) {
            List<Vec> straight = shape(0, 0).finger(finger);
            Vec knuckle = straight.getFirst();
            double length = straight.getLast().distance(knuckle);
            double closed = tip(shape(1, 0), finger).distance(knuckle);
            assertTrue(closed < length / 2, finger + ": " + closed + " of " + length);
            assertEquals(0, straight.getLast().z(), 1e-12);
        }
    }

    @Test
    void an_open_hand_is_as_long_as_a_hand_in_statures() {
        // A hand of 0.108 statures: Drillis and Contini, in Winter 2009.
        assertEquals(0.108, tip(shape(0, 0), 1).x(), 0.006);
    }
}
