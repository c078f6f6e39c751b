package newel.casefile;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Sign;

/**
 * The lists of signs: what is listed is yes and the rest no, what was asked and not known stands in a list of its own, and
 * of a list left out nothing was asked.
 */
record Signs(JsonNode node, String path, List<String> faults) {
    <E extends Enum<E> & Sign> Answers<E> answers(String name, Class<E> type) {
        if (!node.has(name)) {
            return Answers.notAsked();
        }
        check(name, type.getEnumConstants());
        Map<E, Answer> given = new EnumMap<>(type);
        for (E each : type.getEnumConstants()) {
            given.put(each, answer(name, each));
        }
        return new Answers<>(given);
    }

    private Answer answer(String name, Sign sign) {
        if (listed("unknown", sign)) {
            return Answer.UNKNOWN;
        }
        return listed(name, sign) ? Answer.YES : Answer.NO;
    }

    private boolean listed(String name, Sign sign) {
        for (JsonNode text : node.path(name)) {
            if (names(sign, text.asText())) {
                return true;
            }
        }
        return false;
    }

    void checkUnknown(Sign[]... known) {
        check("unknown", Stream.of(known).flatMap(Arrays::stream).toArray(Sign[]::new));
    }

    private void check(String name, Sign[] known) {
        for (int i = 0; i < node.path(name).size(); i++) {
            String text = node.get(name).get(i).asText();
            if (Arrays.stream(known).noneMatch(each -> names(each, text))) {
                faults.add("%s.%s[%d]: there is no such sign: %s".formatted(path, name, i, text));
            }
        }
    }

    /** By its code, or by its name as words joined with hyphens. */
    private static boolean names(Sign sign, String text) {
        return text.equalsIgnoreCase(sign.code()) || text.equals(CaseWriter.plain((Enum<?>) sign));
    }
}
