package newel.client;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;

/** A timed walk of known length as a speed. */
public final class WalkingSpeed {
    /**
     * Metres a second, to 16 digits: a time in hundredths of a second that does not meet a cut-off of one decimal exactly
     * misses it by far more. A walk that could not be done has no speed: 0.
     */
    public static Measured of(Measured walk) {
        if (walk.measure().course() == 0) {
            return walk;
        }
        BigDecimal seconds = walk.result().amount();
        BigDecimal speed = walk.unable() || seconds.signum() == 0
                ? BigDecimal.ZERO
                : BigDecimal.valueOf(walk.measure().course()).divide(seconds, MathContext.DECIMAL64);
        return new Measured(
                Measure.GAIT_SPEED,
                new Quantity(speed, Unit.METRES_PER_SECOND),
                walk.on(),
                walk.done(),
                Map.of(Part.COURSE, BigDecimal.valueOf(walk.measure().course()), Part.WALK, seconds));
    }

    private WalkingSpeed() {}
}
