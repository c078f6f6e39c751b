package newel.web.form;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import newel.client.Answer;
import newel.client.Answers;

/** A list of questions answered by yes, no or not known, one a row. */
public record Rows<E extends Enum<E>>(String prefix, Class<E> questions, Function<E, String> words) {

    public static Ask.Pick row(Asking ask, String name, String legend) {
        return ask.one(name, legend, Choice.answers()).shaped(Ask.Shape.ROW);
    }

    /** Left open counts as not known. */
    public static Answer answer(Reading reading, String field) {
        return reading.one(field, Answer.class, Answer.UNKNOWN);
    }

    public List<Ask> asks(Asking ask) {
        return asks(ask, question -> true);
    }

    public List<Ask> asks(Asking ask, Predicate<E> asked) {
        List<Ask> asks = new ArrayList<>();
        for (E question : questions.getEnumConstants()) {
            if (asked.test(question)) {
                asks.add(row(ask, name(question), words.apply(question)));
            }
        }
        return asks;
    }

    public Answers<E> read(Reading reading) {
        Map<E, Answer> given = new EnumMap<>(questions);
        for (E question : questions.getEnumConstants()) {
            given.put(question, answer(reading, name(question)));
        }
        return new Answers<>(given);
    }

    /** Each has to be answered, if only by not known. */
    public Answers<E> readAll(Reading reading) {
        Map<E, Answer> given = new EnumMap<>(questions);
        for (E question : questions.getEnumConstants()) {
            Answer answer = reading.one(name(question), Answer.class, "Answer: " + words.apply(question) + ".");
            given.put(question, answer == null ? Answer.UNKNOWN : answer);
        }
        return new Answers<>(given);
    }

    public Typed fill(Typed typed, Answers<E> answers) {
        Typed filled = typed;
        for (E question : questions.getEnumConstants()) {
            filled = filled.with(name(question), Choice.of(answers.to(question)));
        }
        return filled;
    }

    private String name(E question) {
        return prefix + Choice.of(question);
    }
}
