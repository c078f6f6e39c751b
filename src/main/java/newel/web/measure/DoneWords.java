package newel.web.measure;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import newel.assess.Result;
import newel.assess.Scored;
import newel.client.Aid;
import newel.client.Measured;
import newel.client.Part;

/** A result as it is read: its number, its day and how it was done. */
final class DoneWords {
    static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    /** What was typed; a timed walk with its speed behind it, stands with arms with their score. */
    static String value(Result result) {
        Measured measured = result.measured();
        if (measured.unable()) {
            return "Could not be done";
        }
        String typed = measured.result().toString();
        return result.score().equals(measured.result())
                ? typed
                : "%s, which is %s".formatted(typed, Scored.rounded(result.score()));
    }

    /** Empty where there is nothing to say. */
    static String how(Measured measured) {
        List<String> said = new ArrayList<>();
        if (measured.done().side() != null) {
            said.add(measured.done().side().name().toLowerCase(Locale.ROOT) + " side");
        }
        if (measured.done().aid() != Aid.NONE) {
            said.add("with " + measured.done().aid().words());
        }
        if (measured.armsUsed()) {
            said.add("arms used");
        }
        measured.parts().entrySet().stream()
                .sorted(Comparator.comparing(Map.Entry::getKey))
                .forEach(part -> said.add(part(part)));
        return String.join("; ", said);
    }

    private static String part(Map.Entry<Part, java.math.BigDecimal> part) {
        return "%s %s %s"
                .formatted(
                        part.getKey().words().toLowerCase(Locale.ROOT),
                        part.getValue().toPlainString(),
                        part.getKey().unit());
    }

    private DoneWords() {}
}
