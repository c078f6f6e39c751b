package newel.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Nothing that the client reads uses a word of the trade where an everyday word says the same. */
final class EverydayWords implements Rule {
    private static final List<Jargon> JARGON =
            WordList.read("jargon.txt").stream().map(Jargon::of).toList();
    private static final Map<String, Jargon> WHOLE = JARGON.stream()
            .filter(jargon -> !jargon.begins())
            .collect(Collectors.toMap(Jargon::word, Function.identity()));
    private static final List<Jargon> BEGINNINGS =
            JARGON.stream().filter(Jargon::begins).toList();

    /** The catalogue says the same few hundred words over and over. */
    private static final Map<String, Optional<Jargon>> LOOKED_UP = new ConcurrentHashMap<>();

    /** @param begins whether any ending may follow */
    private record Jargon(String word, boolean begins, String instead) {
        /** "scapul*: shoulder blade" */
        static Jargon of(String line) {
            String[] halves = line.split(": ", 2);
            return new Jargon(halves[0].replace("*", ""), halves[0].endsWith("*"), halves[1]);
        }
    }

    @Override
    public Stream<Flaw> flaws(Movement movement) {
        Stream<Flaw> variants = movement.variants().stream()
                .flatMap(variant -> in(movement, variant.id(), PlainWords.lines(variant.words())));
        return Stream.concat(in(movement, movement.id(), List.of(movement.why())), variants);
    }

    private static Stream<Flaw> in(Movement movement, String id, List<String> lines) {
        return lines.stream()
                .flatMap(line -> Reading.words(line).flatMap(word -> told(word, line).stream()))
                .map(what -> Rule.flaw(movement, id, what));
    }

    private static Optional<String> told(String word, String line) {
        return LOOKED_UP
                .computeIfAbsent(word.toLowerCase(Locale.ROOT), EverydayWords::jargon)
                .map(jargon -> "'" + word + "' is a word of the trade, say " + jargon.instead() + ": " + line);
    }

    private static Optional<Jargon> jargon(String lower) {
        return Optional.ofNullable(WHOLE.get(lower))
                .or(() -> BEGINNINGS.stream()
                        .filter(jargon -> lower.startsWith(jargon.word()))
                        .findFirst());
    }
}
