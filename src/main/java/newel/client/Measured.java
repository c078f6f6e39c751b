package newel.client;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One result.
 *
 * @param result as it was typed, in the unit it was typed in; of a test in parts, what the parts come to
 * @param parts seconds or metres of each part that was done; empty for a test of one number
 */
public record Measured(Measure measure, Quantity result, LocalDate on, Done done, Map<Part, BigDecimal> parts) {
    public Measured {
        parts = parts.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, part -> Quantity.plain(part.getValue())));
    }

    public Measured(Measure measure, Quantity result, LocalDate on, Done done) {
        this(measure, result, on, done, Map.of());
    }

    public Measured(Measure measure, double value, LocalDate on) {
        this(measure, value, on, false);
    }

    public Measured(Measure measure, double value, LocalDate on, boolean armsUsed) {
        this(
                measure,
                Quantity.of(value, measure.unit()),
                on,
                new Done(false, armsUsed, Done.AS_TOLD.side(), Done.AS_TOLD.aid()));
    }

    /** The number in the measure's own unit. */
    public double value() {
        return result.in(measure.unit()).amount().doubleValue();
    }

    public boolean unable() {
        return done.unable();
    }

    public boolean armsUsed() {
        return done.armsUsed();
    }

    public Optional<BigDecimal> part(Part part) {
        return Optional.ofNullable(parts.get(part));
    }
}
