package newel.practice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** Every rule that can change what a person is given, in the order it is read. Each id stands once. */
public record Rulebook(List<Statement> all) {
    public Rulebook {
        all = List.copyOf(all);
        TreeSet<String> ids = new TreeSet<>();
        for (Statement each : all) {
            if (!ids.add(each.rule().id())) {
                throw new IllegalArgumentException(
                        "two rules are called " + each.rule().id());
            }
        }
    }

    @SafeVarargs
    public static Rulebook of(List<Statement>... parts) {
        return new Rulebook(Stream.of(parts).flatMap(List::stream).toList());
    }

    public Rulebook only(Known known) {
        return new Rulebook(
                all.stream().filter(each -> each.rule().known() == known).toList());
    }

    public Map<String, List<Statement>> bySubject() {
        Map<String, List<Statement>> subjects = new LinkedHashMap<>();
        for (Statement each : all) {
            subjects.merge(
                    each.subject(),
                    List.of(each),
                    (some, one) -> Stream.concat(some.stream(), one.stream()).toList());
        }
        return subjects;
    }

    /** Where the rule stands with this practice; a rule that the book does not hold needs a sign-off like any other. */
    public Standing standing(Rule rule, SignOffs signOffs) {
        return all.stream()
                .filter(each -> each.rule().id().equals(rule.id()))
                .findFirst()
                .map(signOffs::of)
                .orElseGet(Standing.Needed::new);
    }
}
