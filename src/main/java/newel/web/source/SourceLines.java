package newel.web.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import newel.practice.Rulebook;
import newel.practice.SignOffs;

/** Rules grouped by what they are about, each with where it stands. */
final class SourceLines {
    static List<SourcesPage.Subject> of(Rulebook rulebook, SignOffs signOffs) {
        List<SourcesPage.Subject> subjects = new ArrayList<>();
        rulebook.bySubject()
                .forEach((name, statements) -> subjects.add(new SourcesPage.Subject(
                        name,
                        slug(name),
                        statements.stream()
                                .map(each -> new SourcesPage.Line(each, signOffs.of(each)))
                                .toList())));
        return List.copyOf(subjects);
    }

    private static String slug(String name) {
        return "about-" + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    static int signed(Rulebook rulebook, SignOffs signOffs) {
        return (int) rulebook.all().stream()
                .filter(each -> signOffs.of(each).signed())
                .count();
    }

    private SourceLines() {}
}
