package newel.web.form;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import newel.client.Answer;

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

    /** Yes, no and not known, as they are labelled everywhere. */
    public static Map<String, String> answers() {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put(of(Answer.YES), "Yes");
        answers.put(of(Answer.NO), "No");
        answers.put(of(Answer.UNKNOWN), "Not known");
        return answers;
    }

    private Choice() {}
}
