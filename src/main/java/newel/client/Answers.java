package newel.client;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** One answer to each question of a list; a question without an entry was never answered. */
public record Answers<Q extends Enum<Q>>(Map<Q, Answer> given) {

    public Answers {
        given = given.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<Q, Answer>(given));
    }

    public static <Q extends Enum<Q>> Answers<Q> notAsked() {
        return new Answers<>(Map.<Q, Answer>of());
    }

    /** Every question asked: yes to these, no to all others. */
    @SafeVarargs
    public static <Q extends Enum<Q>> Answers<Q> onlyYes(Class<Q> questions, Q... yes) {
        Map<Q, Answer> given = new EnumMap<>(questions);
        EnumSet.allOf(questions).forEach(question -> given.put(question, Answer.NO));
        Arrays.stream(yes).forEach(question -> given.put(question, Answer.YES));
        return new Answers<>(given);
    }

    public Answers<Q> with(Q question, Answer answer) {
        Map<Q, Answer> changed = new EnumMap<>(question.getDeclaringClass());
        changed.putAll(given);
        changed.put(question, answer);
        return new Answers<>(changed);
    }

    public Answer to(Q question) {
        return given.getOrDefault(question, Answer.UNKNOWN);
    }

    public Set<Q> all(Class<Q> questions, Answer answer) {
        Set<Q> found = EnumSet.allOf(questions);
        found.removeIf(question -> to(question) != answer);
        return found;
    }
}
