package newel.assess;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import newel.client.Sex;
import newel.source.Statement;

/** Every table of every test in words, with all its figures: what a clinician reads before signing it off. */
final class Statements {
    private static final String LEVELS = "Where a program starts";

    static List<Statement> of(Collection<Guide> guides, SppbPoints points) {
        List<Statement> all = new ArrayList<>();
        guides.forEach(guide -> all.addAll(of(guide)));
        all.add(new Statement(points.rule(), "Test: Short physical performance battery", says(points)));
        all.add(new Statement(
                LowStrength.RULE,
                LEVELS,
                "Weak grip or slow chair stands together make low strength; a slow walk beside it, low performance."));
        all.add(new Statement(StartingLevels.RULE, LEVELS, capital(StartingLevels.RULE.citation()) + "."));
        return List.copyOf(all);
    }

    private static Stream<Statement> ofTables(Guide guide, String subject) {
        return guide.tables().stream().map(table -> new Statement(table.rule(), subject, says(guide, table)));
    }

    private static List<Statement> of(Guide guide) {
        String subject = "Test: " + guide.measure().words();
        Stream<Statement> change = guide.meaningful().stream()
                .map(each -> new Statement(
                        each.rule(),
                        subject,
                        "A change of %s %s means something, of %s %s a lot (%s)."
                                .formatted(
                                        plain(each.small()),
                                        unit(guide),
                                        plain(each.substantial()),
                                        unit(guide),
                                        each.population())));
        return Stream.concat(ofTables(guide, subject), change).toList();
    }

    private static String says(Guide guide, Table table) {
        return switch (table) {
            case Norm norm ->
                "The usual range (%s) in %s: %s. Whose figures: %s.%s"
                        .formatted(
                                norm.spread(),
                                unit(guide),
                                rows(norm, Statements::range),
                                norm.population(),
                                easy(norm.easy()));
            case CutOff cut ->
                "%s, %s: %s %s. Whose figures: %s.%s"
                        .formatted(
                                capital(cut.flag().words()),
                                cut.compare().words(),
                                rows(cut, row -> plain(row.worse())),
                                unit(guide),
                                cut.population(),
                                cut.applies()
                                        ? easy(cut.easy())
                                        : " Shown and not applied: only for " + cut.onlyFor() + ".");
            case Scale scale ->
                "Grades in %s: %s. Whose figures: %s."
                        .formatted(
                                unit(guide),
                                scale.grades().stream().map(Statements::grade).collect(Collectors.joining("; ")),
                                scale.population());
        };
    }

    private static String easy(boolean easy) {
        return easy ? " Beyond it, a program begins with the easy forms (design choice)." : "";
    }

    private static String rows(Table table, java.util.function.Function<Row, String> figure) {
        return table.rows().stream()
                .map(row -> who(row) + figure.apply(row) + doubt(table, row))
                .collect(Collectors.joining("; "));
    }

    private static String who(Row row) {
        String sex = row.sex() == null ? "" : row.sex() == Sex.FEMALE ? "women " : "men ";
        String ages = row.ages().text();
        return sex + (ages.isEmpty() ? "" : ages + " ");
    }

    private static String range(Row row) {
        return plain(row.worse()) + " to " + plain(row.better());
    }

    private static String doubt(Table table, Row row) {
        String known =
                row.known() == table.rule().known() ? "" : " (" + row.known().words() + ")";
        return known + (row.unsure() ? " (printed in more than one version)" : "");
    }

    private static String grade(Scale.Grade grade) {
        return grade.to() == null
                ? "beyond, " + grade.says().words()
                : (grade.included() ? "to " : "under ") + plain(grade.to()) + ", "
                        + grade.says().words();
    }

    private static String says(SppbPoints points) {
        String walks = points.walks().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(each -> "walk of %s m: %s".formatted(plain(each.getKey()), steps(each.getValue())))
                .collect(Collectors.joining("; "));
        return "Each stance is held %s s, heel to toe earns a point from %s s; %s; five chair stands: %s."
                .formatted(plain(points.hold()), plain(points.tandemShort()), walks, steps(points.stands()));
    }

    private static String steps(Steps steps) {
        return steps.steps().stream()
                .map(each -> "%d points %s %s s"
                        .formatted(each.points(), each.included() ? "to" : "under", plain(each.seconds())))
                .collect(Collectors.joining(", "));
    }

    private static String unit(Guide guide) {
        return guide.measure().unit().words();
    }

    private static String plain(BigDecimal figure) {
        return figure.stripTrailingZeros().toPlainString();
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private Statements() {}
}
