package newel.web.measure;

import java.util.List;
import newel.assess.CutOff;
import newel.assess.Guide;
import newel.assess.Norm;
import newel.assess.Scale;
import newel.assess.Table;
import newel.client.Client;

/** The figures that a test is held against, for this client, and those that are shown and not applied. */
final class Held {
    static List<MeasureCard.Line> lines(Guide judge, Client client, int age) {
        return judge.tables().stream()
                .map(table -> line(judge, table, client, age))
                .toList();
    }

    private static MeasureCard.Line line(Guide judge, Table table, Client client, int age) {
        return new MeasureCard.Line(
                words(table),
                figure(judge, table, client, age),
                table.rule(),
                table.row(age, client.profile().sex())
                        .map(row -> row.known().words())
                        .orElse(table.rule().known().words()),
                table.population(),
                false);
    }

    private static String words(Table table) {
        return switch (table) {
            case Norm norm -> "Usual range";
            case CutOff cutOff -> first(cutOff.flag().words()) + only(cutOff.onlyFor());
            case Scale scale -> "Grades" + only(scale.onlyFor());
        };
    }

    private static String figure(Guide judge, Table table, Client client, int age) {
        FigureWords words = new FigureWords(judge.measure());
        return switch (table) {
            case Norm norm ->
                norm.row(age, client.profile().sex())
                        .map(row -> words.range(norm, row))
                        .orElse("No figure for this age; none is made up.");
            case CutOff cutOff ->
                cutOff.row(age, client.profile().sex())
                        .map(row -> words.cut(cutOff, row))
                        .orElse("No figure for this age; none is made up.");
            case Scale scale -> words.grades(scale);
        };
    }

    private static String only(String onlyFor) {
        return onlyFor.isEmpty() ? "" : ". Not applied here: " + onlyFor;
    }

    private static String first(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private Held() {}
}
