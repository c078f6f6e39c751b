package newel.web.intake;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import newel.web.form.Ask;

/** Reads back what was answered, question by question. */
final class Summary {
    static final String OPEN = "Not answered";

    static List<CheckPage.Answered> of(List<Ask> asks) {
        return asks.stream().flatMap(Summary::of).toList();
    }

    private static Stream<CheckPage.Answered> of(Ask ask) {
        return switch (ask) {
            case Ask.Line line ->
                Stream.of(answered(
                        line.label(), line.value().isEmpty() ? "" : (line.value() + " " + line.unit()).strip()));
            case Ask.Words words -> Stream.of(answered(words.label(), words.value()));
            case Ask.Pick pick -> Stream.of(answered(pick.legend(), chosen(pick)));
            case Ask.Day day ->
                Stream.of(answered(day.legend(), (day.day() + " " + day.month() + " " + day.year()).strip()));
            case Ask.Group group -> group.asks().stream().flatMap(Summary::of);
        };
    }

    private static String chosen(Ask.Pick pick) {
        return pick.options().stream()
                .filter(Ask.Option::chosen)
                .map(Ask.Option::label)
                .collect(Collectors.joining(", "));
    }

    private static CheckPage.Answered answered(String question, String answer) {
        return new CheckPage.Answered(question, answer.isEmpty() ? OPEN : answer);
    }

    static int open(List<Ask> asks) {
        return (int) asks.stream()
                .flatMap(Summary::required)
                .filter(each -> each.answer().equals(OPEN))
                .count();
    }

    private static Stream<CheckPage.Answered> required(Ask ask) {
        return switch (ask) {
            case Ask.Line line -> line.optional() ? Stream.empty() : of(line);
            case Ask.Words words -> words.optional() ? Stream.empty() : of(words);
            case Ask.Pick pick -> pick.optional() ? Stream.empty() : of(pick);
            case Ask.Day day -> day.optional() ? Stream.empty() : of(day);
            case Ask.Group group -> group.asks().stream().flatMap(Summary::required);
        };
    }

    private Summary() {}
}
