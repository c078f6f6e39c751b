package newel.web.form;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a constant is written in a form: {@code CHAIR_STAND} as {@code chair-stand}. */
public final class Choice {
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static List<String> all(Iterable<? extends Enum<?>> constants) {
        List<String> written = new java.util.ArrayList<>();
        constants.forEach(constant -> written.add(of(constant)));
        return written;
    }

    public static <E extends Enum<E>> Optional<E> read(Class<E> kind, String written) {
        return Arrays.stream(kind.getEnumConstants())
                .filter(constant -> of(constant).equals(written))
                .findFirst();
    }

    private Choice() {}
}
