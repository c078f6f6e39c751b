package newel.web.form;

import java.util.Optional;
import java.util.function.Supplier;

/** A form's value, or what is wrong with it; never both. */
public record Parsed<T>(Optional<T> value, Faults faults) {
    public static <T> Parsed<T> of(Faults faults, Supplier<T> value) {
        return new Parsed<>(faults.none() ? Optional.of(value.get()) : Optional.empty(), faults);
    }
}
