package newel.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;

class QuantityTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

    /** The international inch, yard and pound of 1959. */
    @Test
    void a_length_compares_as_itself_in_either_system() {
        assertEquals(0, quantity("1", Unit.INCHES).compareTo(quantity("2.54", Unit.CENTIMETRES)));
        assertEquals(0, quantity("350", Unit.YARDS).compareTo(quantity("320.04", Unit.METRES)));
        assertEquals(0, quantity("8", Unit.POUNDS).compareTo(quantity("3.62873896", Unit.KILOGRAMS)));
        assertEquals(-1, quantity("349.99", Unit.YARDS).compareTo(quantity("320.04", Unit.METRES)));
        assertEquals(1, quantity("-2.5", Unit.INCHES).compareTo(quantity("-6.36", Unit.CENTIMETRES)));
    }

    @Test
    void what_is_no_length_does_not_compare_with_one() {
        assertThrows(
                IllegalArgumentException.class,
                () -> quantity("1", Unit.SECONDS).compareTo(quantity("1", Unit.INCHES)));
    }

    /** 0.7 times 175 is 122.49999 in floating point; as decimals it is 122.5. */
    @Test
    void a_typed_number_is_kept_as_the_decimal_that_it_is() {
        assertEquals("9.9", Quantity.of(9.9, Unit.SECONDS).number());
        assertEquals("-0.5", Quantity.of(-0.5, Unit.INCHES).number());
        assertEquals("100", Quantity.of(100, Unit.STEPS).number());
        Random random = new Random(20260301);
        for (int i = 0; i < 2000; i++) {
            BigDecimal typed = BigDecimal.valueOf(random.nextInt(2_000_000) - 1_000_000, 2);
            assertEquals(
                    0, Quantity.of(typed.doubleValue(), Unit.SECONDS).amount().compareTo(typed), typed.toString());
        }
    }

    @Test
    void a_walk_is_a_speed_over_its_own_course() {
        assertEquals(
                "0.8",
                WalkingSpeed.of(new Measured(Measure.WALK_4M, 5, DAY)).result().number());
        assertEquals(
                "0.6",
                WalkingSpeed.of(new Measured(Measure.WALK_3M, 5, DAY)).result().number());
        assertEquals(
                1,
                WalkingSpeed.of(new Measured(Measure.WALK_4M, 4.99, DAY))
                        .result()
                        .compareTo(quantity("0.8", Unit.METRES_PER_SECOND)));
        assertEquals(
                -1,
                WalkingSpeed.of(new Measured(Measure.WALK_4M, 5.01, DAY))
                        .result()
                        .compareTo(quantity("0.8", Unit.METRES_PER_SECOND)));
    }

    private static Quantity quantity(String amount, Unit unit) {
        return new Quantity(new BigDecimal(amount), unit);
    }
}
